using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How the planner's tables are laid out.</summary>
internal static class PlanTables
{
    public static void Describe(ModelBuilder model)
    {
        model.Entity<WindowRuleRow>(rule =>
        {
            rule.HasIndex(r => r.Key).IsUnique();
            rule.HasIndex(r => r.Line);
            rule.Property(r => r.Exceptions).HasConversion(new JsonList<DateTime>(), JsonList<DateTime>.Comparer);
        });
        model.Entity<SpareRow>(spare =>
        {
            spare.HasIndex(s => new { s.Kind, s.Designation }).IsUnique();
            spare.Property(s => s.ExpressLeadDays).HasDefaultValue(SpareRow.UsualExpressLeadDays).HasSentinel(-1);
            spare.Property(s => s.OnOrder).HasConversion(new JsonList<SpareDelivery>(), JsonList<SpareDelivery>.Comparer);
        });
        // Zero is a figure like any other: only what no program ever writes stands for "not said".
        model.Entity<PlanningCostsRow>().Property(c => c.FrozenHours).HasDefaultValue(PlanningCostsRow.UsualFrozenHours)
            .HasSentinel(-1);
        model.Entity<LineCostRow>().HasIndex(l => l.Line).IsUnique();
        model.Entity<SwapWorkRow>().HasIndex(w => w.Family).IsUnique();
        model.Entity<SwapTermsRow>(terms =>
        {
            terms.HasIndex(t => t.ChainId).IsUnique();
            terms.HasOne<ChainRow>().WithMany().HasForeignKey(t => t.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<PurchaseRow>(purchase =>
        {
            purchase.HasIndex(p => p.State);
            purchase.Property(p => p.Steps).HasConversion(new JsonList<PurchaseStep>(), JsonList<PurchaseStep>.Comparer);
            purchase.Ignore(p => p.IsOpen);
        });
        model.Entity<PlanVersionRow>(version =>
        {
            version.HasIndex(v => v.Name).IsUnique();
            version.Property(v => v.Swaps).HasConversion(new JsonList<VersionSwap>(), JsonList<VersionSwap>.Comparer);
        });
        model.Entity<SwapRow>(swap =>
        {
            swap.HasIndex(s => s.ChainId).IsUnique().HasFilter("Outcome = 0");
            swap.HasIndex(s => new { s.Outcome, s.Start });
            swap.Property(s => s.PartsTaken).HasConversion(new JsonList<PartTaken>(), JsonList<PartTaken>.Comparer)
                .HasDefaultValueSql("'[]'");
            swap.HasOne<ChainRow>().WithMany().HasForeignKey(s => s.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
