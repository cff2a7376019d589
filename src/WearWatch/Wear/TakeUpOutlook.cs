using WearWatch.Chains;
using WearWatch.Gauging;

namespace WearWatch.Wear;

/// <summary>When a chain is to be shortened: the first of its two dates, where its take-up ends before it is worn.</summary>
/// <param name="End">Where the take-up ends, and how many pitches go.</param>
/// <param name="Forecast">The hours left to that, from the last reading.</param>
public sealed record TakeUpOutlook(TakeUpEnd End, WearForecast Forecast)
{
    /// <summary>By how much the take-up stands farther out than a chain's elongation explains, in millimetres.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings, in the order in which they were taken.</param>
    /// <param name="events">Its events, in the order in which they happened.</param>
    /// <param name="chain">The chain that runs now.</param>
    /// <param name="elongationPercent">Its elongation at the last reading, in percent; null when it is not known.</param>
    internal static double AheadMm(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, FittedChain chain,
        double? elongationPercent)
    {
        if (elongationPercent is not { } elongation || chain.LastReadingIndex is not { } last) return 0;
        var position = readings[last].TakeUpMm;
        // An event since the last reading has set the take-up anew.
        if (readings[last].TakenAt is { } at && events.LastOrDefault(e => e.At >= at && e.TakeUpMm is not null) is { } set)
            position = set.TakeUpMm;
        return position is { } mm
            ? TakeUpEnd.AheadMm(LimitCase.Of(card) with { PitchesOut = Shortening.PitchesOut(events) }, mm, elongation)
            : 0;
    }
}
