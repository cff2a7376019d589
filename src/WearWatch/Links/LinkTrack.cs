using WearWatch.Chains.Links;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>One measure of a round-link chain over its running hours, with its own limit and forecast.</summary>
/// <param name="Measure">Which measure.</param>
/// <param name="Limit">Its limit; null where none is known.</param>
/// <param name="Points">Its values at the visits, in order.</param>
/// <param name="Outlook">When it will have reached its limit.</param>
public sealed record LinkTrack(LinkMeasure Measure, LinkLimit? Limit, IReadOnlyList<LinkPoint> Points, MeasureOutlook Outlook)
{
    /// <summary>The limit that it comes to: none are left once it has reached it. Null where its date is not known.</summary>
    public LimitAhead? Ahead => Points.Any(p => p.Finding.IsReached) ? new(LinkWords.Of(Measure), LimitTrend.Reached, 0)
        : Outlook is MeasureOutlook.Known known ? new(LinkWords.Of(Measure), known.Forecast, known.HoursSince)
        : null;

    /// <summary>The track of a measure over the visits of the chain that runs now.</summary>
    internal static LinkTrack Of(
        LinkMeasure measure, LinkTable table, LinkLimits limits, ChainVisits<MeasuredLinks> visits, ProductionCalendar calendar,
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
        return new(measure, limit, points, OutlookOf(limit, points, visits.Chain, calendar, now));
    }

    private static MeasureOutlook OutlookOf(
        LinkLimit? limit, List<LinkPoint> points, FittedChain chain, ProductionCalendar calendar, DateTimeOffset now) =>
        limit is null
            ? new MeasureOutlook.NotKnown($"Not known: no limit is known. Enter the maker's.")
            : LimitTrend.Of([.. points.Select(p => new WayPoint(p.At, p.Hours, p.Finding.Way!.Value))], chain, calendar, now);
}
