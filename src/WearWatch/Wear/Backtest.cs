using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>What would have been forecast when only a chain's first readings were known.</summary>
public static class Backtest
{
    /// <summary>
    /// The forecast of the chain that ran at the last reading known, in running hours from its last reading, used or held back.
    /// </summary>
    /// <remarks>
    /// Nothing that came later is looked at: readings after the first <paramref name="readingsKnown"/> are cut off first, and an
    /// event counts only if it lies before a known reading. The chain's card is known from the start: where its fitting comes
    /// after all known readings the hours count from that fitting.
    /// </remarks>
    /// <param name="card">The chain.</param>
    /// <param name="readings">All its readings in the order in which they were taken.</param>
    /// <param name="events">All its events in the order in which they happened.</param>
    /// <param name="prior">What is believed of it before the first reading.</param>
    /// <param name="limitPercent">The elongation asked about.</param>
    /// <param name="readingsKnown">How many of the readings are known.</param>
    /// <param name="calendar">Places readings that have a date and no counter.</param>
    /// <param name="constants">The constants of wear; the defaults if not given.</param>
    public static WearForecast Answer(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, WearPrior prior,
        double limitPercent, int readingsKnown, ProductionCalendar? calendar = null, WearConstants? constants = null)
    {
        var filter = constants is null ? WearFilter.Default : new WearFilter(constants);
        var known = ChainHistory.AsOfLastReading(card, [.. readings.Take(readingsKnown)], events, calendar);
        return filter.Forecast(known.Current, filter.Follow(known.Current, prior), limitPercent);
    }

    /// <summary>The card of the chain that ran at the last of these readings: with the lot that its fitting told.</summary>
    public static ChainCard CardKnown(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar? calendar = null) =>
        card with { Lot = ChainHistory.AsOfLastReading(card, readings, events, calendar).Current.Lot };
}
