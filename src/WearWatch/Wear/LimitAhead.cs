using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>A limit that a chain comes to, by its length or by another measure of it, with the hours left.</summary>
/// <remarks>
/// A chain goes by the first of them: the one whose early end, 5 %, comes soonest. This is the one place where that is decided;
/// dates, list, board and plan all take what it answers.
/// </remarks>
/// <param name="Cause">What reaches its limit, such as <c>pin diameter</c>; empty for the length.</param>
/// <param name="Forecast">The running hours left from the last visit.</param>
/// <param name="HoursSince">Running hours from that visit until now.</param>
public sealed record LimitAhead(Phrase Cause, WearForecast Forecast, double HoursSince)
{
    /// <summary>Whether it is the sprockets' own: they go with the chain then.</summary>
    public bool IsOfSprockets { get; init; }

    /// <summary>Whether it is the length that reaches it.</summary>
    public bool IsByLength => Cause.IsEmpty;

    private double EarlyHours => Forecast.PercentilesHours[4] - HoursSince;

    /// <summary>The limit of the length.</summary>
    public static LimitAhead ByLength(Assessment chain) =>
        new(Phrase.None, chain.Forecast, chain.HoursNow - chain.HoursAtLastReading);

    /// <summary>The one that comes first; of two that come at once the first told. Null where none is told.</summary>
    public static LimitAhead? First(IEnumerable<LimitAhead> limits) => limits.MinBy(limit => limit.EarlyHours);

    /// <summary>When it is reached at a percentile (5 for the planner), or null when that is not in sight.</summary>
    /// <param name="percent">The percentile, 1 to 99.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment.</param>
    public DateTimeOffset? DateAt(int percent, ProductionCalendar calendar, DateTimeOffset now) =>
        Forecast.Quantile(percent) is { } hours ? calendar.After(now, new RunningHours(hours - HoursSince)) : null;
}
