using WearWatch.Chains.Links;

namespace WearWatch.Links;

/// <summary>Holds measures against their limits.</summary>
internal static class LinkFindings
{
    /// <summary>What a visit's measure says; null where it was not taken.</summary>
    public static LinkFinding? Of(MeasuredLinks visit, LinkMeasure measure, LinkTable table, LinkLimits limits) =>
        visit.ValueMm(measure) is { } mm
            ? new(measure, mm, LinkUncertainty.StandardMm(measure, mm, visit.Tool), table.NewMm(measure), limits.Of(measure))
            : null;

    /// <summary>How bad it is, for ordering: the upper end on the way to its limit, or its change where it has none.</summary>
    public static double Badness(LinkFinding finding) =>
        finding.UsedPercent + finding.ExpandedUsedPercent ?? finding.ChangePercent;
}
