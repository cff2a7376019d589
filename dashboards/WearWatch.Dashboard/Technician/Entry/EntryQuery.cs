using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>Asks for what is expected of a chain before it is measured.</summary>
public sealed class EntryQuery(IDbContextFactory<WearDb> databases, ChainReader reader, PlantClock clock)
{
    /// <summary>The chain of a name; null when there is none.</summary>
    public async Task<EntryChain?> AskAsync(string name, long? corrects, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.AsNoTracking().FirstOrDefaultAsync(c => c.Name == name, ct) is not { } row) return null;
        if (await reader.AssessAsync(row.Id, ct) is not { } assessment) return null;
        var standing = await db.StandingReadingsAsync(row.Id, ct);
        var lastCounted = standing.LastOrDefault(r => r.CounterH is not null);
        // A counter that was changed since then counts from what it showed after the change.
        var changed = (await db.StandingEventsAsync(row.Id, ct))
            .LastOrDefault(e =>
                e.CounterAfterH is not null && e.CounterAfterH != e.CounterBeforeH && e.At > lastCounted?.TakenAt);
        return new EntryChain
        {
            Row = row,
            Assessment = assessment,
            Last = standing.Count > 0 ? standing[^1] : null,
            LastCounterH = changed?.CounterAfterH ?? lastCounted?.CounterH,
            Corrects = corrects is { } id
                ? await db.Readings.AsNoTracking().FirstOrDefaultAsync(r => r.Id == id && r.ChainId == row.Id, ct)
                : null,
            EarlyDate = await db.Forecasts.Where(f => f.ChainId == row.Id && f.IsLatest).Select(f => f.EarlyDate)
                .FirstOrDefaultAsync(ct),
            Time = await clock.NowAsync(ct),
        };
    }
}
