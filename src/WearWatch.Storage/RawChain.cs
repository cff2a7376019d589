using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Inspections;
using WearWatch.Links;
using WearWatch.Lubrication;
using WearWatch.Parts;
using WearWatch.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>All that was told of a chain: what everything else is computed from.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Card">Its entry in the register.</param>
/// <param name="ReadingRows">The readings that stand, in the order taken.</param>
/// <param name="EventRows">The events that stand, in the order in which they happened.</param>
/// <param name="WaitingRows">The readings that wait for a person.</param>
/// <param name="Stamp">The state of the rows that it was made from.</param>
public sealed record RawChain(
    int Id, ChainCard Card, IReadOnlyList<ReadingRow> ReadingRows, IReadOnlyList<EventRow> EventRows,
    IReadOnlyList<ReadingRow> WaitingRows,
    RawStamp Stamp)
{
    /// <summary>When its position really ran, as signals tell.</summary>
    public RunningLog Ran { get; init; } = RunningLog.Empty;

    /// <summary>The readings as the domain knows them; an index into them is an index into <see cref="ReadingRows"/>.</summary>
    public IReadOnlyList<Reading> Readings { get; } = [.. ReadingRows.Select(r => r.ToReading(Card.Name))];

    /// <summary>The events as the domain knows them.</summary>
    public IReadOnlyList<ChainEvent> Events { get; } = [.. EventRows.Select(e => e.ToEvent(Card.Name))];

    /// <summary>The looks at it, in the order in which they were taken.</summary>
    public IReadOnlyList<Inspection> Looks { get; init; } = [];

    /// <summary>The measures of its links that stand, in the order taken.</summary>
    public IReadOnlyList<LinkMeasureRow> LinkMeasureRows { get; init; } = [];

    /// <summary>The measures of its links as the domain knows them.</summary>
    public IReadOnlyList<MeasuredLinks> LinkMeasures => [.. LinkMeasureRows.Select(m => m.ToMeasures())];

    /// <summary>The readings of its parts that stand, in the order taken.</summary>
    public IReadOnlyList<PartReadingRow> PartRows { get; init; } = [];

    /// <summary>The readings of its parts as the domain knows them.</summary>
    public IReadOnlyList<PartReading> Parts => [.. PartRows.Select(p => p.ToReading())];

    /// <summary>The card of the chain that runs now: with the lot that its fitting told.</summary>
    public ChainCard CardNow => Card.After(Events);

    /// <summary>
    /// The card with what the position has shown of its duty up to the last reading: what a fleet model is asked with.
    /// </summary>
    public ChainCard CardSeen(ProductionCalendar calendar) => DutySeen.AtLastReading(CardNow, Readings, Events, calendar);

    /// <summary>When the last of it was told; null when nothing was.</summary>
    public DateTimeOffset? LastToldAt =>
        ReadingRows.Select(r => (DateTimeOffset?)r.ReceivedAt).Concat(EventRows.Select(e => (DateTimeOffset?)e.ReceivedAt))
            .Concat(LinkMeasureRows.Select(m => (DateTimeOffset?)m.ReceivedAt))
            .Concat(PartRows.Select(p => (DateTimeOffset?)p.ReceivedAt)).Max();

    /// <summary>Loads chains by id, in the order of their ids.</summary>
    public static async Task<IReadOnlyList<RawChain>> LoadAsync(
        WearDb db, IReadOnlyCollection<int> ids, CancellationToken ct = default)
    {
        var chains = await db.Chains.AsNoTracking().Where(c => EF.Parameter(ids).Contains(c.Id)).OrderBy(c => c.Id)
            .ToListAsync(ct);
        var readings = (await db.Readings.AsNoTracking().Where(r => EF.Parameter(ids).Contains(r.ChainId)).OrderBy(r => r.Id)
            .ToListAsync(ct)).ToLookup(r => r.ChainId);
        var events = (await db.Events.AsNoTracking().Where(e => EF.Parameter(ids).Contains(e.ChainId)).OrderBy(e => e.Id)
            .ToListAsync(ct)).ToLookup(e => e.ChainId);
        var ran = await db.RunningAsync(ids, ct);
        var looks = (await db.Looks.AsNoTracking().Where(l => EF.Parameter(ids).Contains(l.ChainId)).OrderBy(l => l.TakenAt)
            .ThenBy(l => l.Id).ToListAsync(ct)).ToLookup(l => l.ChainId);
        var links = (await db.LinkMeasures.AsNoTracking().Where(m => EF.Parameter(ids).Contains(m.ChainId)).OrderBy(m => m.Id)
            .ToListAsync(ct)).ToLookup(m => m.ChainId);
        var parts = (await db.PartReadings.AsNoTracking().Where(p => EF.Parameter(ids).Contains(p.ChainId)).OrderBy(p => p.Id)
            .ToListAsync(ct)).ToLookup(p => p.ChainId);
        return
        [
            .. from chain in chains
               select Of(
                   chain, [.. readings[chain.Id]], [.. events[chain.Id]], [.. links[chain.Id]], [.. parts[chain.Id]]) with
               {
                   Ran = ran.GetValueOrDefault(chain.Id, RunningLog.Empty),
                   Looks = [.. looks[chain.Id].Select(l => l.ToInspection())],
               }
        ];
    }

    private static RawChain Of(
        ChainRow chain, IReadOnlyList<ReadingRow> readings, IReadOnlyList<EventRow> events,
        IReadOnlyList<LinkMeasureRow> links, IReadOnlyList<PartReadingRow> parts) => new(
        chain.Id, chain.ToCard(), StandingRows.Standing(readings), StandingRows.Standing(events), StandingRows.Waiting(readings),
        new RawStamp(
            chain.Revision, readings.Count > 0 ? readings[^1].Id : null, events.Count > 0 ? events[^1].Id : null,
            links.Count > 0 ? links[^1].Id : null, parts.Count > 0 ? parts[^1].Id : null))
        {
            PartRows = StandingRows.Standing(parts),
            LinkMeasureRows = StandingRows.Standing(links),
        };
}
