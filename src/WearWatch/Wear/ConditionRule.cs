using WearWatch.Chains;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>When a chain is called what.</summary>
/// <remarks>
/// Not known: no reading of the chain that runs now could be used. Swap now: the limit has been passed by now with at least even
/// odds, or the track's elongation has reached it. Plan a swap: the early end of the forecast falls within the planning lead,
/// the limit may have been passed already with more than one chance in twenty, or the elongation has reached a planning mark of
/// the limit's own rule. Within limit: the rest. Common practice; docs/method.md.
/// A chain that lifts or holds a load is judged by the upper end of what is known of it, and one chance in twenty is enough for
/// red: it is never milder than the same chain that lifts nothing. docs/safety.md.
/// </remarks>
public static class ConditionRule
{
    /// <summary>How far ahead a swap is planned: parts, people and a window take about two months.</summary>
    public static TimeSpan PlanningLead { get; } = TimeSpan.FromDays(56);

    private const double EvenOdds = 0.5;
    private const double OneInTwenty = 0.05;

    /// <summary>The condition.</summary>
    /// <param name="elongationPercent">Elongation by the track; null without readings.</param>
    /// <param name="limit">The limit that governs.</param>
    /// <param name="forecast">The forecast of it, from the last reading.</param>
    /// <param name="hoursSinceReading">Running hours since the last reading.</param>
    /// <param name="leadHours">Running hours of the planning lead.</param>
    /// <param name="liftingUpperPercent">
    /// The upper end of the elongation of a chain that lifts or holds a load; null for any other.
    /// </param>
    public static Condition Of(
        double? elongationPercent, ReplacementLimit limit, WearForecast forecast, double hoursSinceReading,
        RunningHours leadHours, double? liftingUpperPercent)
    {
        if (elongationPercent is not { } middle) return Condition.NotKnown;
        var elongation = Math.Max(middle, liftingUpperPercent ?? middle);
        var passedByNow = forecast.ProbabilityWithin(hoursSinceReading);
        if (passedByNow >= (liftingUpperPercent is null ? EvenOdds : OneInTwenty) || elongation >= limit.Percent)
            return Condition.SwapNow;
        return passedByNow > OneInTwenty || forecast.EarlyHours <= hoursSinceReading + leadHours.Hours
            || elongation >= limit.PlanFromPercent
            ? Condition.PlanASwap
            : Condition.WithinLimit;
    }
}
