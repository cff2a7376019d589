using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Running;
using WearWatch.Signals;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Signals;

/// <summary>Concludes what follows from telemetry: running hours by day, readings of sensors, oilings.</summary>
/// <remarks>
/// The hours in which there is more than was concluded say what is to do. Everything that is made has a key or a place of its
/// own, so that it does no harm to conclude twice, after a kill or by two workers. Raw readings are never changed.
/// </remarks>
public sealed class SignalDesk(
    IDbContextFactory<WearDb> database, PlantSettings plant, RunningConclusion running, PassConclusion passes,
    SingleConclusions singles,
    ChainReview review, TimeProvider clock)
{
    /// <summary>
    /// So long nothing more of a day may have come before it is taken as whole, where its sender says nothing of a later day.
    /// </summary>
    private static readonly TimeSpan Settled = TimeSpan.FromHours(1);

    private readonly Dictionary<(int Chain, DateTimeOffset Day), (long Count, DateTimeOffset Since)> unsettled = [];

    /// <summary>Concludes what there is.</summary>
    /// <returns>The chains for which something followed.</returns>
    public async Task<IReadOnlyCollection<int>> RunOnceAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var open = await db.TelemetryHours.AsNoTracking().Where(h => h.Concluded < h.Count).ToListAsync(ct);
        if (open.Count == 0) return [];
        var calendar = await plant.CalendarAsync(ct);
        var now = clock.GetUtcNow();
        var (changed, concluded, failures) = (new List<int>(), new List<TelemetryHourRow>(), new List<Exception>());
        foreach (var chain in open.GroupBy(h => h.ChainId).OrderBy(g => g.Key))
        {
            try
            {
                var (hours, hasRun) = await ConcludeAsync(db, chain.Key, [.. chain], calendar, now, ct);
                concluded.AddRange(hours);
                if (hasRun) changed.Add(chain.Key);
            }
            catch (Exception e) when (e is not OperationCanceledException)
            {
                // One chain's trouble keeps no other chain waiting; its hours stay open.
                failures.Add(new InvalidOperationException($"What was recorded of chain {chain.Key} is not concluded.", e));
            }
        }

        await ConcludedAsync(db, concluded, ct);
        if (changed.Count > 0) await review.ReviewAsync(changed, null, ct);
        return failures.Count == 0 ? changed : throw new AggregateException(failures);
    }

    /// <summary>Concludes what there is of one chain.</summary>
    /// <returns>The hours that are concluded, and whether running hours followed.</returns>
    private async Task<(IReadOnlyList<TelemetryHourRow> Concluded, bool HasRun)> ConcludeAsync(
        WearDb db, int chainId, IReadOnlyList<TelemetryHourRow> hours, ProductionCalendar calendar, DateTimeOffset now,
        CancellationToken ct)
    {
        var hasRun = await running.ConcludeAsync(chainId, [.. hours.Where(h => IsRunning(h.Kind))], calendar, ct);
        await singles.ConcludeAsync(
            chainId, [.. hours.Where(h => h.Kind is TelemetryKind.Length or TelemetryKind.Oiling)], calendar.TimeZone, ct);
        var concluded = hours.Where(h => h.Kind != TelemetryKind.Passes).ToList();
        // A day of passes is looked at when it is whole; its hours stay open until then.
        foreach (var day in hours.Where(h => h.Kind == TelemetryKind.Passes).GroupBy(h => PlantDay.Of(h.Hour, calendar.TimeZone)))
        {
            if (!await IsWholeAsync(db, chainId, day.Key, day.Sum(h => h.Count), now, ct)) continue;
            await passes.ConcludeAsync(chainId, day.Key, ct);
            concluded.AddRange(day);
        }

        return (concluded, hasRun);
    }

    /// <summary>Whether all passes of a day are there. After an outage those of past days come late and by and by.</summary>
    private async Task<bool> IsWholeAsync(
        WearDb db, int chainId, PlantDay day, long count, DateTimeOffset now, CancellationToken ct)
    {
        if (day.End > now) return false;
        if (!await db.TelemetryHours
            .AnyAsync(h => h.ChainId == chainId && h.Kind == TelemetryKind.Passes && h.Hour >= day.End, ct))
        {
            if (!unsettled.TryGetValue((chainId, day.Start), out var last) || last.Count != count)
                unsettled[(chainId, day.Start)] = last = (count, now);
            if (now - last.Since < Settled) return false;
        }

        unsettled.Remove((chainId, day.Start));
        return true;
    }

    private static bool IsRunning(TelemetryKind kind) =>
        kind is TelemetryKind.RunningCounter or TelemetryKind.RunningSwitch or TelemetryKind.RunningPulses;

    /// <summary>
    /// Marks hours with the count that was there when they were looked at: what came since is concluded next time. All in one
    /// transaction: the intake waits once for it, not once per chain.
    /// </summary>
    private static async Task ConcludedAsync(WearDb db, List<TelemetryHourRow> hours, CancellationToken ct)
    {
        if (hours.Count == 0) return;
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        foreach (var hour in hours)
            await db.TelemetryHours.Where(h => h.ChainId == hour.ChainId && h.Kind == hour.Kind && h.Hour == hour.Hour)
                .ExecuteUpdateAsync(set => set.SetProperty(h => h.Concluded, hour.Count), ct);
        await transaction.CommitAsync(ct);
    }
}
