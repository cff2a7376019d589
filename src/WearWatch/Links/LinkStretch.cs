using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Links;

/// <summary>Tells wear from stretch: what a chain has lengthened beyond the wear of its crowns was an overload.</summary>
/// <remarks>
/// Each link loses <c>d - d1</c> at either crown, so wear alone lengthens it by <c>2 (d - d1)/p</c>; d nominal diameter, d1
/// diameter
/// in the direction of pull, p pitch. Derived from geometry; docs/gauging.md.
/// </remarks>
/// <param name="GrowthPercent">How much longer it is than new, in percent of the pitch.</param>
/// <param name="WearPercent">What the wear of the crowns explains of it, in percent of the pitch.</param>
/// <param name="UnsurePercent">Expanded uncertainty of the difference with the tolerance of a new chain, in percent.</param>
public sealed record LinkStretch(double GrowthPercent, double WearPercent, double UnsurePercent)
{
    /// <summary>How much longer than nominal new links may be, in percent: one link, and many. From memory.</summary>
    private const double OneLinkTolerancePercent = 2;
    private const double SeveralTolerancePercent = 0.6;

    /// <summary>Whether more than the uncertainty explains is stretch, and so an overload.</summary>
    public bool IsOverload => GrowthPercent - WearPercent > UnsurePercent;

    /// <summary>What it says, in a sentence.</summary>
    public Phrase Sentence => Phrase.Join(" ",
    [
        $"Longer by {GrowthPercent:0.00} %; wear of the crowns explains {WearPercent:0.00} % (± {UnsurePercent:0.00} %).",
        IsOverload
            ? Phrase.Of(
                $"The rest is permanent set: the chain was overloaded. Out of use until a competent person has examined it.")
            : $"No sign of permanent set beyond wear.",
    ]);

    /// <summary>The comparison of a visit; null unless d1 and a length were measured.</summary>
    public static LinkStretch? Of(MeasuredLinks told, LinkTable table)
    {
        if (told.D1Mm is not { } d1) return null;
        var p = table.Size.PitchMm;
        var wearPercent = 200 * Math.Max(0, table.Size.DiameterMm - d1) / p;
        var unsureWear = 200 * 2 * LinkUncertainty.StandardMm(LinkMeasure.ThinnestDiameter, d1, Tool.Caliper) / p;
        LinkStretch?[] found =
        [
            Growth(LinkMeasure.SeveralLinks, told.SeveralLinksMm, table.Links,
                table.UnusedSeveralLinksMm is null ? SeveralTolerancePercent : 0),
            Growth(LinkMeasure.OneLink, told.OneLinkMm, 1, OneLinkTolerancePercent),
        ];
        return found.OfType<LinkStretch>().MaxBy(s => s.GrowthPercent - s.WearPercent - s.UnsurePercent);

        LinkStretch? Growth(LinkMeasure measure, double? valueMm, int links, double tolerancePercent)
        {
            if (valueMm is not { } mm) return null;
            var percentPerMm = 100 / (links * p);
            var unsure = percentPerMm * 2 * LinkUncertainty.StandardMm(measure, mm, told.Tool);
            return new(
                percentPerMm * (mm - table.NewMm(measure)), wearPercent,
                tolerancePercent + Math.Sqrt(unsure * unsure + unsureWear * unsureWear));
        }
    }
}
