using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>The visits that belong to the chain that runs now, each at its running hours.</summary>
/// <param name="Visits">The visits in the order in which they were made, with the hours of the fitted chain.</param>
/// <param name="Chain">The fitted chain; its observations are the visits.</param>
internal sealed record ChainVisits<T>(IReadOnlyList<(T Told, double Hours)> Visits, FittedChain Chain);

/// <summary>Places visits on the line of a position's running hours, as lengths over pitches are placed.</summary>
/// <remarks>
/// The machinery of readings does it: each visit stands in for a reading, and the readings themselves come along, since their
/// counters date visits that have none. Only a recorded fitting begins another life: a measure that fell may be a slip, and a
/// slip must not make a worn part new.
/// </remarks>
internal static class ChainVisits
{
    private const int StandInPitches = 10;

    /// <summary>
    /// No fall between two visits looks like a new chain by this, so that only a recorded fitting begins another one.
    /// </summary>
    private const double WornPercent = 0.8;
    private const double FreshPercent = 0.5;
    private const double ApartPercent = 1e-6;

    /// <summary>Places visits.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="visits">The visits in the order in which they were made.</param>
    /// <param name="of">When each was made, at which counter, and whether it shows a part that is nearly new.</param>
    /// <param name="readings">The chain's other readings.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="calendar">When its line runs.</param>
    public static ChainVisits<T> Place<T>(
        ChainCard card, IReadOnlyList<T> visits, Func<T, (DateTimeOffset? At, RunningHours? Counter, bool IsFresh)> of,
        IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        var stand = visits.Select(of).Concat(readings.Select(r => (r.TakenAt, r.Counter, IsFresh(r, card))))
            .Select((v, i) => Stand(card, v, i)).ToList();
        var history = ChainHistory.Take(card, stand, events, calendar);
        var chain = history.Current;
        var hours = chain.Observations.ToDictionary(o => o.ReadingIndex, o => o.HoursSinceFitting);
        // Of two visits at the same hours one stands for both in the machinery; here each place counts.
        foreach (var other in chain.Outdone)
            hours[other] = chain.Observations.MinBy(o => Apart(stand[o.ReadingIndex], stand[other])).HoursSinceFitting;
        return new([.. hours.Where(h => h.Key < visits.Count).OrderBy(h => h.Key).Select(h => (visits[h.Key], h.Value))], chain);
    }

    private static double Apart(Reading a, Reading b) => a.Counter is { } x && b.Counter is { } y
        ? Math.Abs(x.Hours - y.Hours)
        : a.TakenAt is { } at && b.TakenAt is { } then ? Math.Abs((at - then).TotalHours) : double.MaxValue;

    private static bool IsFresh(Reading reading, ChainCard card) =>
        reading.LengthMm < (1 + WornPercent / 100) * reading.Pitches * card.PitchMm;

    private static Reading Stand(
        ChainCard card, (DateTimeOffset? At, RunningHours? Counter, bool IsFresh) visit, int index) => new()
        {
            Chain = card.Name,
            TakenAt = visit.At,
            Counter = visit.Counter,
            Tool = Tool.Caliper,
            Pitches = StandInPitches,
            // No two are the same reading.
            LengthMm = StandInPitches * card.PitchMm
                * (1 + ((visit.IsFresh ? FreshPercent : WornPercent) + ApartPercent * index) / 100),
        };
}
