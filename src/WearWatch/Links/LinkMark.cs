using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>From where on a measure says what, for a phone that judges it without signal.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="NewMm">What it is when new, in millimetres.</param>
/// <param name="PlanMm">From here on a competent person sets the date, in millimetres.</param>
/// <param name="OutMm">From here on the limit may be reached within the uncertainty of a caliper, in millimetres.</param>
/// <param name="OutByTapeMm">The same by tape, which only a length over several links is measured with; else null.</param>
public sealed record LinkMark(LinkLimit Limit, double NewMm, double PlanMm, double OutMm, double? OutByTapeMm)
{
    /// <summary>The marks of all limits.</summary>
    public static IReadOnlyList<LinkMark> Of(LinkTable table, LinkLimits limits) =>
    [
        .. from limit in limits.All
           let fresh = table.NewMm(limit.Measure)
           select new LinkMark(
               limit, fresh, fresh + LimitWay.PlanFromPercent / 100 * (limit.Mm - fresh), Out(limit, Tool.Caliper),
               limit.Measure == LinkMeasure.SeveralLinks ? Out(limit, Tool.Tape) : null),
    ];

    private static double Out(LinkLimit limit, Tool tool) =>
        limit.Mm + (limit.IsLength ? -2 : 2) * LinkUncertainty.StandardMm(limit.Measure, limit.Mm, tool);
}
