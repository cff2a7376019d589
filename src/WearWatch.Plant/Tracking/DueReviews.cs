using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Plant.Tracking;

/// <summary>
/// Finds the chains that are to be reviewed because time went on, the fleet model changed, or a process ended before it had
/// reviewed them.
/// </summary>
public sealed class DueReviews(
    IDbContextFactory<WearDb> database, PlantSettings plant, Calibrations calibrations, TimeProvider clock)
{
    /// <summary>The chains whose newest forecast is of another day, other knowledge or older rows than there are now.</summary>
    public async Task<IReadOnlyList<int>> FindAsync(CancellationToken ct = default)
    {
        var zone = (await plant.CalendarAsync(ct)).TimeZone;
        var midnight = TimeZoneInfo.ConvertTime(clock.GetUtcNow(), zone).Date;
        var today = new DateTimeOffset(midnight, zone.GetUtcOffset(midnight));
        var version = (await calibrations.KnowledgeAsync(ct)).Version;
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Chains.Where(c => !db.Forecasts.Any(f =>
                f.ChainId == c.Id && f.IsLatest && f.MadeAt >= today && f.ModelVersion == version && f.ChainRevision == c.Revision
                && f.LastReadingId == db.Readings.Where(r => r.ChainId == c.Id).Max(r => (long?)r.Id)
                && f.LastEventId == db.Events.Where(e => e.ChainId == c.Id).Max(e => (long?)e.Id)
                && f.LastLinkMeasureId == db.LinkMeasures.Where(m => m.ChainId == c.Id).Max(m => (long?)m.Id)
                && f.LastPartReadingId == db.PartReadings.Where(p => p.ChainId == c.Id).Max(p => (long?)p.Id)))
            .OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct);
    }
}
