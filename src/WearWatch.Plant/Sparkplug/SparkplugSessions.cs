using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Sparkplug;

/// <summary>Loads the sessions of edge nodes, and asks nodes for their births.</summary>
public sealed class SparkplugSessions(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>A node is asked for its births at most so often.</summary>
    public static readonly TimeSpan BetweenAsks = TimeSpan.FromSeconds(10);

    /// <summary>The session of a node, inside the current transaction; its rows are saved with it.</summary>
    public static async Task<SparkplugSession> OfAsync(WearDb db, SparkplugTopic topic, CancellationToken ct)
    {
        var node = db.SparkplugNodes.Local.FirstOrDefault(n => n.Group == topic.Group && n.Node == topic.Node)
            ?? await db.SparkplugNodes.FirstOrDefaultAsync(n => n.Group == topic.Group && n.Node == topic.Node, ct);
        if (node is null)
        {
            node = new SparkplugNodeRow { Group = topic.Group, Node = topic.Node };
            db.SparkplugNodes.Add(node);
            await db.SaveChangesAsync(ct);
        }

        var metrics = db.SparkplugMetrics.Local.Where(m => m.NodeId == node.Id).ToList();
        if (metrics.Count == 0) metrics = await db.SparkplugMetrics.Where(m => m.NodeId == node.Id).ToListAsync(ct);
        return new SparkplugSession(node, metrics);
    }

    /// <summary>Keeps what a message changed, inside the current transaction.</summary>
    public static Task KeepAsync(WearDb db, SparkplugSession session, CancellationToken ct)
    {
        db.SparkplugMetrics.AddRange(session.Metrics.Where(m => m.Id == 0));
        return db.SaveChangesAsync(ct);
    }

    /// <summary>Takes the nodes that are to be asked for their births now; no other process asks them meanwhile.</summary>
    public async Task<IReadOnlyList<SparkplugNodeRow>> ToAskAsync(CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        var before = now - BetweenAsks;
        await using var db = await databases.CreateDbContextAsync(ct);
        var taken = new List<SparkplugNodeRow>();
        foreach (var node in await db.SparkplugNodes.AsNoTracking()
            .Where(n => n.WantsBirth && (n.BirthAskedAt == null || n.BirthAskedAt < before)).ToListAsync(ct))
        {
            var mine = await db.SparkplugNodes.Where(n => n.Id == node.Id && n.BirthAskedAt == node.BirthAskedAt)
                .ExecuteUpdateAsync(n => n.SetProperty(x => x.BirthAskedAt, now), ct);
            if (mine == 1) taken.Add(node);
        }

        return taken;
    }

    /// <summary>
    /// Wants the births of all nodes anew: the broker kept nothing for this host, so deaths and data may be missed.
    /// </summary>
    public async Task ForgetAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.SparkplugNodes.Where(n => n.IsOnline).ExecuteUpdateAsync(n => n.SetProperty(x => x.WantsBirth, true), ct);
    }
}
