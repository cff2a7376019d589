using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>
/// A chain's raw readings and events put in order: which fitted chain each reading belongs to, and at which running hours.
/// </summary>
/// <param name="Lives">The fitted chains in order; the last one runs now. Never empty.</param>
/// <param name="HeldBack">The readings that were not used, in the order in which they were taken.</param>
public sealed record ChainHistory(IReadOnlyList<FittedChain> Lives, IReadOnlyList<HeldBackReading> HeldBack)
{
    /// <summary>The chain that runs now.</summary>
    public FittedChain Current => Lives[^1];

    /// <summary>Takes in raw readings and events.</summary>
    /// <remarks>
    /// Hours count on over changed counters (<see cref="HourLine"/>); a recorded fitting begins a new life, and so does one that
    /// the readings show (<see cref="UnrecordedReplacement"/>). Shortening leaves the elongation of a pitch as it is and so the
    /// track too. Of places and strands measured at the same hours the most worn counts.
    /// </remarks>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings in the order in which they were taken; in any order if all have dates.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="calendar">Places readings that have a date and no counter; round the clock if not given.</param>
    public static ChainHistory Take(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar? calendar = null) =>
        Take(card, readings, events, calendar, onlyUpToLastReading: false);

    /// <summary>
    /// Takes in raw readings and events as they stood at the last reading: events that no reading has followed are left out.
    /// </summary>
    internal static ChainHistory AsOfLastReading(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar? calendar = null) =>
        Take(card, readings, events, calendar, onlyUpToLastReading: true);

    private static ChainHistory Take(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar? calendar,
        bool onlyUpToLastReading)
    {
        var gauged = GaugedReading.All(card, readings);
        var log = PositionLog.Of(card, gauged, events);
        if (onlyUpToLastReading) log = PositionLog.UpToLastReading(log);
        var filled = MissingCounters.Fill(log, calendar ?? ProductionCalendar.AlwaysRunning);
        var line = HourLine.Of(filled);
        var lives = Lifetimes.Of(filled, line, gauged);
        return new(lives.Chains, HeldBackReadings.Of(card, gauged, line, lives));
    }
}
