using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Telemetry;

/// <summary>
/// Keeps telemetry small: old single messages go, since their hours are summed up; old hours become days, which are kept for
/// ever.
/// </summary>
/// <remarks>A message goes only after it was sent on, where it is to be, and after what follows from it was concluded.</remarks>
public sealed class TelemetryThinning(IDbContextFactory<WearDb> database, IOptions<TelemetryOptions> options, TimeProvider clock)
{
    /// <summary>Thins once.</summary>
    /// <returns>How many single messages went.</returns>
    public async Task<int> RunOnceAsync(CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await RollUpAsync(db, now - TimeSpan.FromDays(options.Value.HourlyDays), ct);
        var before = now - TimeSpan.FromDays(options.Value.RawDays);
        if (await db.TelemetryHours.Where(h => h.Concluded < h.Count).MinAsync(h => (DateTimeOffset?)h.Hour, ct) is { } open
            && open < before) before = open;
        await db.SetAside.Where(s => s.LastAt < before).ExecuteDeleteAsync(ct);
        return await db.Telemetry.Where(t => t.At < before && !t.AwaitsForwarding).ExecuteDeleteAsync(ct);
    }

    private static async Task RollUpAsync(WearDb db, DateTimeOffset before, CancellationToken ct)
    {
        var day = new DateTimeOffset(before.UtcDateTime.Date, TimeSpan.Zero);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var hours = await db.TelemetryHours.AsNoTracking().Where(h => h.Hour < day && h.Concluded >= h.Count).ToListAsync(ct);
        await db.KeepDaysAsync(hours.GroupBy(h => (h.ChainId, h.Kind, h.Hour.UtcDateTime.Date)).Select(g => new TelemetryDayRow
        {
            ChainId = g.Key.ChainId,
            Kind = g.Key.Kind,
            Day = new DateTimeOffset(g.Key.Date, TimeSpan.Zero),
            Count = g.Sum(h => h.Count),
            Sum = g.Sum(h => h.Sum),
            Min = g.Min(h => h.Min),
            Max = g.Max(h => h.Max),
        }), ct);
        await db.TelemetryHours.Where(h => h.Hour < day && h.Concluded >= h.Count).ExecuteDeleteAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
