using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <content>Foreign signals: how they are read, what was heard, and how Sparkplug's edge nodes stand.</content>
public partial class WearDb
{
    public DbSet<SignalMappingRow> SignalMappings => Set<SignalMappingRow>();

    public DbSet<ListeningRow> Listenings => Set<ListeningRow>();

    public DbSet<HeardMessageRow> HeardMessages => Set<HeardMessageRow>();

    public DbSet<SparkplugNodeRow> SparkplugNodes => Set<SparkplugNodeRow>();

    public DbSet<SparkplugMetricRow> SparkplugMetrics => Set<SparkplugMetricRow>();

    /// <summary>The version of each mapping that holds.</summary>
    public IQueryable<SignalMappingRow> LatestMappings =>
        SignalMappings.AsNoTracking().Where(m => !SignalMappings.Any(o => o.Name == m.Name && o.Version > m.Version));
}
