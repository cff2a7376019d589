using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How reports on work orders are laid out.</summary>
internal static class WorkOrderTables
{
    public static void Describe(ModelBuilder model) => model.Entity<WorkOrderReportRow>(report =>
    {
        report.HasIndex(r => new { r.KeyOwner, r.Key }).IsUnique();
        report.HasIndex(r => r.Standing);
        report.HasIndex(r => r.SwapId);
        report.Property(r => r.Material).HasConversion(new JsonList<MaterialUsed>()!, JsonList<MaterialUsed>.Comparer!);
        report.HasOne<SwapRow>().WithMany().HasForeignKey(r => r.SwapId).OnDelete(DeleteBehavior.Restrict);
    });
}
