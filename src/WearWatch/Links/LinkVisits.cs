using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>The visits to a chain's links, each at its running hours.</summary>
internal static class LinkVisits
{
    /// <summary>Places the visits of the chain that runs now.</summary>
    public static ChainVisits<MeasuredLinks> Place(
        ChainCard card, LinkTable table, IReadOnlyList<MeasuredLinks> visits, IReadOnlyList<Reading> readings,
        IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        var limits = LinkLimits.For(table, holdsLoad: true, LawRegion.NotSet);
        return ChainVisits.Place(
            card, visits, v => (v.TakenAt, v.Counter, IsFresh(v, table, limits)), readings, events, calendar);
    }

    private static bool IsFresh(MeasuredLinks visit, LinkTable table, LinkLimits limits) =>
        LinkVerdict.Of(visit, table, limits).Worst?.UsedPercent is not >= 25;
}
