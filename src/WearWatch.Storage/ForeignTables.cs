using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How the tables of foreign signals are laid out.</summary>
internal static class ForeignTables
{
    private const int LongestName = 80;

    public static void Describe(ModelBuilder model)
    {
        model.Entity<SignalMappingRow>(mapping =>
        {
            mapping.Property(m => m.Name).HasMaxLength(LongestName);
            mapping.Property(m => m.Words).HasConversion(new JsonList<ChainWord>(), JsonList<ChainWord>.Comparer);
            mapping.HasIndex(m => new { m.Name, m.Version }).IsUnique();
        });
        model.Entity<ListeningRow>().HasIndex(l => l.Until);
        model.Entity<HeardMessageRow>(heard =>
        {
            heard.HasKey(h => new { h.Topic, h.Place });
            heard.HasIndex(h => h.At);
        });
        model.Entity<SparkplugNodeRow>(node =>
        {
            node.HasIndex(n => new { n.Group, n.Node }).IsUnique();
            node.HasIndex(n => n.WantsBirth);
        });
        model.Entity<SparkplugMetricRow>(metric =>
        {
            metric.HasIndex(m => new { m.NodeId, m.Device, m.Name }).IsUnique();
            metric.HasIndex(m => m.ChainId);
            metric.HasOne<SparkplugNodeRow>().WithMany().HasForeignKey(m => m.NodeId).OnDelete(DeleteBehavior.Cascade);
            metric.HasOne<ChainRow>().WithMany().HasForeignKey(m => m.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
