using WearWatch.Chains.Links;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>One measure of a round-link chain over its running hours, with its own limit and forecast.</summary>
/// <param name="Measure">Which measure.</param>
/// <param name="Limit">Its limit; null where none is known.</param>
/// <param name="Points">Its values at the visits, in order.</param>
/// <param name="Outlook">When it will have reached its limit.</param>
/// <remarks>
/// The filter and the forecast of elongations serve each measure on its own scale: new is 0 and the limit
/// <see cref="LimitOnScalePercent"/>, where they were tuned. No run-in is taken: the scale begins at the nominal size. The prior
/// is broad, since a hoist runs tens of hours a year and a conveyor thousands: by three visits the readings decide. Common
/// practice.
/// </remarks>
public sealed record LinkTrack(LinkMeasure Measure, LinkLimit? Limit, IReadOnlyList<LinkPoint> Points, LinkOutlook Outlook)
{
    /// <summary>Fewer visits at different hours show no trend.</summary>
    public const int FewestVisits = 3;

    private const double LimitOnScalePercent = 3;

    private static WearFilter Filter { get; } =
        new(WearConstants.Default with { RunInPercent = 0, RunInDeviationPercent = 0 });

    private static WearPrior Prior { get; } = new(Math.Log(0.6), 4, 0, 0.4, "broad prior of links");

    /// <summary>The track of a measure over the visits of the chain that runs now.</summary>
    internal static LinkTrack Of(
        LinkMeasure measure, LinkTable table, LinkLimits limits, LinkVisits visits, ProductionCalendar calendar,
        DateTimeOffset now)
    {
        var limit = limits.Of(measure);
        List<LinkPoint> points =
        [
            .. from visit in visits.Visits
               let finding = LinkFindings.Of(visit.Told, measure, table, limits)
               where finding is not null
               select new LinkPoint(visit.Told.TakenAt, visit.Hours, visit.Told.Place, finding),
        ];
        return new(measure, limit, points, OutlookOf(limit, points, visits, calendar, now));
    }

    private static LinkOutlook OutlookOf(
        LinkLimit? limit, List<LinkPoint> points, LinkVisits visits, ProductionCalendar calendar, DateTimeOffset now)
    {
        if (limit is null) return new LinkOutlook.NotKnown("Not known: no limit is known. Enter the maker's.");
        Observation[] worst =
        [
            .. points.GroupBy(p => Math.Round(p.Hours)).OrderBy(g => g.Key)
                .Select(g => g.MaxBy(p => p.Finding.UsedPercent)!).Select((p, i) => OnScale(p, i)),
        ];
        if (worst.Length < FewestVisits)
            return new LinkOutlook.NotKnown($"Not known: {worst.Length} of {FewestVisits} visits at different running hours.");

        var chain = visits.Chain with { Observations = worst, RunningHours = worst[^1].HoursSinceFitting };
        var forecast = Filter.Forecast(chain, Filter.Follow(chain, Prior), LimitOnScalePercent);
        var since = points[^1].At is { } last ? calendar.Between(last, now).Hours : 0;
        return new LinkOutlook.Known(forecast, DateAt(5), DateAt(50), forecast.ProbabilityWithin(since), since);

        DateTimeOffset? DateAt(int percent) =>
            forecast.Quantile(percent) is { } hours ? calendar.After(now, new RunningHours(hours - since)) : null;
    }

    private static Observation OnScale(LinkPoint point, int index) => new(
        point.Hours, LimitOnScalePercent / 100 * point.Finding.UsedPercent!.Value,
        LimitOnScalePercent / 200 * point.Finding.ExpandedUsedPercent!.Value, index);
}
