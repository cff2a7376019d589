using Microsoft.EntityFrameworkCore;
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
    }
}
