using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How notices are laid out.</summary>
internal static class NoticeTables
{
    public static void Describe(ModelBuilder model)
    {
        model.Entity<NoticeRow>(notice =>
        {
            notice.HasIndex(n => new { n.ChainId, n.Kind }).IsUnique().HasFilter("EndedAt IS NULL");
            notice.HasOne<ChainRow>().WithMany().HasForeignKey(n => n.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<NoticeStepRow>(step =>
        {
            step.HasIndex(s => s.Key).IsUnique();
            step.HasIndex(s => s.NoticeId);
            step.HasOne<NoticeRow>().WithMany().HasForeignKey(s => s.NoticeId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<PlantNoticeRow>().HasIndex(n => n.Kind).IsUnique().HasFilter("EndedAt IS NULL");
    }
}
