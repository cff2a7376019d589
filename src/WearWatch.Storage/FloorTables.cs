using Microsoft.EntityFrameworkCore;
using WearWatch.Inspections;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>The tables of the technician's floor.</summary>
internal static class FloorTables
{
    public static void Describe(ModelBuilder model)
    {
        model.Entity<WalkRow>(walk =>
        {
            walk.HasIndex(w => w.ChainId).IsUnique();
            walk.HasOne<ChainRow>().WithMany().HasForeignKey(w => w.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<RoundHandRow>(hand =>
        {
            hand.HasIndex(h => h.Key).IsUnique();
            hand.HasIndex(h => new { h.Day, h.Line });
        });
        model.Entity<PartReadingRow>(part =>
        {
            part.HasIndex(p => new { p.KeyOwner, p.Key }).IsUnique();
            part.HasIndex(p => p.ChainId);
            part.HasOne<ChainRow>().WithMany().HasForeignKey(p => p.ChainId).OnDelete(DeleteBehavior.Restrict);
            part.HasOne<PartReadingRow>().WithMany().HasForeignKey(p => p.CorrectsId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<InspectionRow>(look =>
        {
            look.HasIndex(l => l.Key).IsUnique();
            look.HasIndex(l => l.ChainId);
            look.HasOne<ChainRow>().WithMany().HasForeignKey(l => l.ChainId).OnDelete(DeleteBehavior.Restrict);
            look.Property(l => l.Findings).HasConversion(new JsonList<Finding>(), JsonList<Finding>.Comparer);
        });
        model.Entity<PhotoRow>(photo =>
        {
            photo.HasIndex(p => p.Key).IsUnique();
            photo.HasIndex(p => p.LookKey);
            photo.HasOne<ChainRow>().WithMany().HasForeignKey(p => p.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
