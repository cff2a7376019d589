using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>When a measure other than elongation reaches its own limit, by its values over the running hours.</summary>
/// <remarks>
/// The filter and the forecast of elongations serve each measure on its own scale: new is 0 and the limit
/// <see cref="LimitOnScalePercent"/>, where they were tuned. No run-in is taken: the scale begins at the nominal size. The prior
/// is broad, since a hoist runs tens of hours a year and a conveyor thousands: by three visits the readings decide. Common
/// practice.
/// </remarks>
public static class LimitTrend
{
    /// <summary>Fewer visits at different hours show no trend.</summary>
    public const int FewestVisits = 3;

    private const double LimitOnScalePercent = 3;

    /// <summary>The forecast of a measure of which a reading has reached its limit: no hours are left.</summary>
    public static WearForecast Reached { get; } = new()
    {
        LimitPercent = LimitOnScalePercent,
        ProbabilityPassed = 1,
        PercentilesHours = [.. Enumerable.Repeat(0.0, 99)],
    };

    private static WearFilter Filter { get; } =
        new(WearConstants.Default with { RunInPercent = 0, RunInDeviationPercent = 0 });

    private static WearPrior Prior { get; } = new(Math.Log(0.6), 4, 0, 0.4, $"broad prior of measures");

    /// <summary>The outlook of a measure; of several values at the same hours the worst counts.</summary>
    /// <param name="points">Its values in the order in which they were taken.</param>
    /// <param name="chain">The fitted chain, or whatever wears, to which the hours belong.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    internal static MeasureOutlook Of(
        IReadOnlyList<WayPoint> points, FittedChain chain, ProductionCalendar calendar, DateTimeOffset now)
    {
        Observation[] worst =
        [
            .. points.GroupBy(p => Math.Round(p.Hours)).OrderBy(g => g.Key)
                .Select(g => g.MaxBy(p => p.Way.Percent)!).Select(OnScale),
        ];
        if (worst.Length < FewestVisits)
            return new MeasureOutlook.NotKnown($"Not known: {worst.Length} of {FewestVisits} visits at different running hours.");

        chain = chain with { Observations = worst, RunningHours = worst[^1].HoursSinceFitting };
        var forecast = Filter.Forecast(chain, Filter.Follow(chain, Prior), LimitOnScalePercent);
        var since = points[^1].At is { } last ? calendar.Between(last, now).Hours : 0;
        var ahead = new LimitAhead(Phrase.None, forecast, since);
        return new MeasureOutlook.Known(
            forecast, ahead.DateAt(5, calendar, now), ahead.DateAt(50, calendar, now), forecast.ProbabilityWithin(since), since);
    }

    private static Observation OnScale(WayPoint point, int index) => new(
        point.Hours, LimitOnScalePercent / 100 * point.Way.Percent, LimitOnScalePercent / 200 * point.Way.ExpandedPercent, index);
}
