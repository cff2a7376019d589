using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage;

/// <summary>The state of all that was told of a chain; since rows are only ever added, five numbers tell it.</summary>
/// <param name="Revision">The state of its entry in the register.</param>
/// <param name="LastReadingId">The newest reading row; null when there is none.</param>
/// <param name="LastEventId">The newest event row; null when there is none.</param>
/// <param name="LastLinkMeasureId">The newest row of link measures; null when there is none.</param>
/// <param name="LastPartReadingId">The newest row of a part's reading; null when there is none.</param>
public readonly record struct RawStamp(
    int Revision, long? LastReadingId, long? LastEventId, long? LastLinkMeasureId, long? LastPartReadingId)
{
    /// <summary>The present stamps of chains.</summary>
    public static async Task<Dictionary<int, RawStamp>> OfAsync(
        WearDb db, IReadOnlyCollection<int> ids, CancellationToken ct = default) =>
        await db.Chains.AsNoTracking().Where(c => EF.Parameter(ids).Contains(c.Id)).Select(c => new
        {
            c.Id,
            c.Revision,
            Reading = db.Readings.Where(r => r.ChainId == c.Id).Max(r => (long?)r.Id),
            Event = db.Events.Where(e => e.ChainId == c.Id).Max(e => (long?)e.Id),
            Links = db.LinkMeasures.Where(m => m.ChainId == c.Id).Max(m => (long?)m.Id),
            Parts = db.PartReadings.Where(p => p.ChainId == c.Id).Max(p => (long?)p.Id),
        }).ToDictionaryAsync(c => c.Id, c => new RawStamp(c.Revision, c.Reading, c.Event, c.Links, c.Parts), ct);
}
