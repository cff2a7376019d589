using Microsoft.EntityFrameworkCore;
using WearWatch.Gauging;
using WearWatch.Signals;
using WearWatch.Signals.Running;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.Signals;

/// <summary>Asks for what machines tell of a chain, and keeps how its sensors were measured in.</summary>
public sealed class SignalsQuery(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    private const int DaysShown = 14;

    /// <summary>The page of a chain; null when no chain has the name.</summary>
    public async Task<SignalsView?> AskAsync(string name, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.AsNoTracking().FirstOrDefaultAsync(c => c.Name == name, ct) is not { } chain) return null;
        var running = await db.RunDays.AsNoTracking().Where(d => d.ChainId == chain.Id).OrderByDescending(d => d.Day)
            .Take(DaysShown).ToListAsync(ct);
        var passes = await db.PassDays.AsNoTracking().Where(d => d.ChainId == chain.Id).OrderByDescending(d => d.Day)
            .Take(DaysShown).ToListAsync(ct);
        var sensors = await db.SensorPairs.AsNoTracking().Where(s => s.ChainId == chain.Id).OrderByDescending(s => s.From)
            .ThenByDescending(s => s.Id).FirstOrDefaultAsync(ct);
        var yesterday = clock.GetUtcNow() - TimeSpan.FromDays(1);
        var strokes = await db.Telemetry.AsNoTracking().Where(t =>
            t.ChainId == chain.Id && t.Kind == TelemetryKind.Oiling && t.At > yesterday).Select(t => t.Value).ToListAsync(ct);
        return new SignalsView(
            chain, running, await DriftAsync(db, chain.Id, ct), passes, sensors, (strokes.Count(s => s <= 0), strokes.Count))
        {
            Nodes = await db.SparkplugNodes.AsNoTracking()
                .Where(n => db.SparkplugMetrics.Any(m => m.NodeId == n.Id && m.ChainId == chain.Id))
                .OrderBy(n => n.Group).ThenBy(n => n.Node).ToListAsync(ct),
        };
    }

    private static async Task<MeterDrift?> DriftAsync(WearDb db, int chainId, CancellationToken ct)
    {
        var record = (await db.RunningAsync([chainId], ct)).GetValueOrDefault(chainId);
        if (record is null) return null;
        var read = (await db.StandingReadingsAsync(chainId, ct))
            .Where(r => r is { TakenAt: not null, CounterH: not null, Tool: not Tool.Sensor });
        return MeterDrift.Of([.. read.Select(r => (r.TakenAt!.Value, r.CounterH!.Value)).OrderBy(r => r.Item1)], record);
    }
}
