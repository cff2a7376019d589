using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>The dates of an assessment, by the calendar of its line.</summary>
public static class ForecastDates
{
    /// <summary>
    /// When the limit is reached at a percentile of the forecast (5 for the planner), or null when not in sight.
    /// </summary>
    public static DateTimeOffset? DateAt(this Assessment chain, int percent, ProductionCalendar calendar, DateTimeOffset now) =>
        LimitAhead.ByLength(chain).DateAt(percent, calendar, now);

    /// <summary>When it is to be shortened, at a percentile of that forecast; null when that is not in sight.</summary>
    public static DateTimeOffset? ShortenAt(
        this Assessment chain, int percent, ProductionCalendar calendar, DateTimeOffset now) =>
        chain.TakeUp is { } takeUp
            ? (LimitAhead.ByLength(chain) with { Forecast = takeUp.Forecast }).DateAt(percent, calendar, now)
            : null;

    /// <summary>Probability that the limit will have been passed at a moment.</summary>
    public static double ProbabilityPassedBy(
        this Assessment chain, DateTimeOffset moment, ProductionCalendar calendar, DateTimeOffset now) =>
        chain.Forecast.ProbabilityWithin(LimitAhead.ByLength(chain).HoursSince + calendar.Between(now, moment).Hours);
}
