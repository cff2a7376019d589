using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>The visits that belong to the chain that runs now, each at its running hours.</summary>
/// <param name="Visits">The visits in the order in which they were made, with the hours of the fitted chain.</param>
/// <param name="Chain">The fitted chain; its observations are the visits.</param>
internal sealed record LinkVisits(IReadOnlyList<(MeasuredLinks Told, double Hours)> Visits, FittedChain Chain)
{
    /// <summary>
    /// No fall between two visits looks like a new chain by this, so that only a recorded fitting begins another one.
    /// </summary>
    private const double WornPercent = 0.8;
    private const double FreshPercent = 0.5;
    private const double ApartPercent = 1e-6;

    /// <summary>Places visits on the line of a position's running hours, as lengths over pitches are placed.</summary>
    /// <remarks>
    /// The machinery of readings does it: each visit stands in for a reading, and the readings themselves come along, since their
    /// counters date visits that have none. A chain that lifts is taken for a new one only where its fitting was recorded: a
    /// measure that fell may be a slip, and a slip must not make a worn chain new.
    /// </remarks>
    public static LinkVisits Place(
        ChainCard card, LinkTable table, IReadOnlyList<MeasuredLinks> visits, IReadOnlyList<Reading> readings,
        IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        var limits = LinkLimits.For(table, holdsLoad: true, LawRegion.NotSet);
        var stand = visits.Select((v, i) => Stand(card, v.TakenAt, v.Counter, IsFresh(v, table, limits), i)).Concat(
            readings.Select((r, i) => Stand(card, r.TakenAt, r.Counter, IsFresh(r, card), visits.Count + i))).ToList();
        var history = ChainHistory.Take(card, stand, events, calendar);
        var here = history.Current.Observations.Where(o => o.ReadingIndex < visits.Count)
            .Select(o => (visits[o.ReadingIndex], o.HoursSinceFitting)).ToList();
        return new(here, history.Current);
    }

    private static bool IsFresh(MeasuredLinks visit, LinkTable table, LinkLimits limits) =>
        LinkVerdict.Of(visit, table, limits).Worst?.UsedPercent is not >= 25;

    private static bool IsFresh(Reading reading, ChainCard card) =>
        reading.LengthMm < (1 + WornPercent / 100) * reading.Pitches * card.PitchMm;

    private static Reading Stand(ChainCard card, DateTimeOffset? at, RunningHours? counter, bool fresh, int index) => new()
    {
        Chain = card.Name,
        TakenAt = at,
        Counter = counter,
        Tool = Tool.Caliper,
        Pitches = LinkTable.UsualLinks,
        // No two are the same reading.
        LengthMm = LinkTable.UsualLinks * card.PitchMm
            * (1 + ((fresh ? FreshPercent : WornPercent) + ApartPercent * index) / 100),
    };
}
