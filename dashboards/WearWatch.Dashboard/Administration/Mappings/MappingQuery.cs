using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Mappings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Administration.Mappings;

/// <summary>Asks for a mapping with its versions, and for what came that it could be tried on.</summary>
public sealed class MappingQuery(IDbContextFactory<WearDb> databases)
{
    private const int MessagesShown = 60;
    private const int MetricsShown = 300;

    /// <summary>The mapping of a name; one of no name is new.</summary>
    public async Task<MappingView> AskAsync(string name, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return new MappingView(
            await db.SignalMappings.AsNoTracking().Where(m => m.Name == name).OrderByDescending(m => m.Version).ToListAsync(ct),
            await db.HeardMessages.AsNoTracking().OrderByDescending(h => h.At).Take(MessagesShown).ToListAsync(ct),
            [
                .. (await db.SparkplugMetrics.AsNoTracking()
                    .Join(db.SparkplugNodes, m => m.NodeId, n => n.Id, (Metric, Node) => new { Metric, Node })
                    .OrderBy(x => x.Node.Group).ThenBy(x => x.Node.Node).ThenBy(x => x.Metric.Device).ThenBy(x => x.Metric.Name)
                    .Take(MetricsShown).ToListAsync(ct)).Select(x => new NodeMetric(x.Node, x.Metric))
            ],
            await db.Chains.OrderBy(c => c.Name).Select(c => c.Name).ToListAsync(ct));
    }
}
