using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>A chain's state in sentences: what a planner would read out on the telephone.</summary>
/// <param name="Wear">How worn it is, against what limit.</param>
/// <param name="Limit">Why that limit governs.</param>
/// <param name="Dates">When it is reached, early, middle and late.</param>
public sealed record ChainHeadline(string Wear, string Limit, string Dates)
{
    /// <summary>The sentences of an assessment.</summary>
    public static ChainHeadline Of(Assessment assessment, LimitAhead ahead, ChainDates dates, PlantTime time) => new(
        WearOf(assessment),
        LimitOf(assessment.Limit),
        DatesOf(assessment.OutOfUseBy, Outlook(ahead, dates, time), time));

    private static string WearOf(Assessment assessment) => assessment.ElongationPercent is { } elongation
        ? T[$"{Show.Percent(elongation)} longer than new{RunInWords.Of(assessment)}, ± "
            + $"{Show.Percent(2 * assessment.ElongationStandardDeviationPercent)}, after "
            + $"{Show.Hours(assessment.HoursAtLastReading)}; "
            + $"wearing {Show.Rate(assessment.RatePercentPer1000Hours)}."]
        : T[$"Not measured yet. From chains like it, {Show.Rate(assessment.RatePercentPer1000Hours)} is to be expected."];

    private static string LimitOf(ReplacementLimit limit)
    {
        var reason = TradeWords.Of(limit.Reason);
        var source = Show.Source(limit.Source);
        return T[$"The limit is {Show.Percent(limit.Percent)}: {reason}{(source == reason ? "" : $" ({source})")}."];
    }

    private static string DatesOf(DateTimeOffset? outOfUseBy, string outlook, PlantTime time) => outOfUseBy switch
    {
        null => outlook,
        { } when outOfUseBy <= time.Now => T["Out of use now, whatever the forecast says."] + " " + outlook,
        { } by => T[$"Out of use from {time.DateOf(by)} at the latest, whatever the forecast says."] + " " + outlook,
    };

    private static string Outlook(LimitAhead ahead, ChainDates dates, PlantTime time) =>
        (ahead.IsByLength ? "" : T[$"First at its limit: {ahead.Cause}."] + " ") + Outlook(ahead.Forecast, dates, time);

    private static string Outlook(WearForecast forecast, ChainDates dates, PlantTime time)
    {
        if (forecast.ProbabilityPassed > 0.95) return T["The limit has been passed."];
        if (dates.Early is not { } early) return T["The limit is not in sight."];
        var first = early <= time.Now
            ? T["The limit may be reached any day: more than 1 of 20 such chains has reached it by now."]
            : T[$"19 of 20 such chains last beyond {time.DateOf(early)}."];
        var middle = dates.Middle is { } m
            ? m <= time.Now ? T["Half last beyond today."] : T[$"Half last beyond {time.DateOf(m)}."]
            : T["When half of them have reached it cannot be said yet."];
        var late = dates.Late is { } l
            ? l <= time.Now ? T["1 of 20 lasts beyond today."] : T[$"1 of 20 lasts beyond {time.DateOf(l)}."]
            : T["There is no upper limit yet: more readings are needed."];
        return $"{first} {middle} {late}";
    }
}

/// <summary>When a chain reaches its limit; null where that is not in sight.</summary>
public sealed record ChainDates(DateTimeOffset? Early, DateTimeOffset? Middle, DateTimeOffset? Late)
{
    /// <summary>The dates of a limit.</summary>
    public static ChainDates Of(LimitAhead limit, ProductionCalendar calendar, DateTimeOffset now) => new(
        limit.DateAt(5, calendar, now), limit.DateAt(50, calendar, now), limit.DateAt(95, calendar, now));
}
