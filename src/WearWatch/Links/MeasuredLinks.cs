using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Links;

/// <summary>What somebody measured of a round-link chain at one place, as it was told: raw input, kept for ever.</summary>
/// <remarks>Any of the three may be missing; what was not measured is not known, which is not the same as good.</remarks>
public sealed record MeasuredLinks
{
    /// <summary>When it was measured, if it was told.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter then, if it was told.</summary>
    public RunningHours? Counter { get; init; }

    /// <summary>Which link, where: such as <c>40 links above the hook</c>.</summary>
    public string Place { get; init; } = "";

    /// <summary>With what the length over several links was measured; the other measures always take a caliper.</summary>
    public Tool Tool { get; init; } = Tool.Caliper;

    /// <summary>Inner length of one link in millimetres, L1.</summary>
    public double? OneLinkMm { get; init; }

    /// <summary>Length over several links in millimetres.</summary>
    public double? SeveralLinksMm { get; init; }

    /// <summary>Over how many; null for as many as the chain's table says.</summary>
    public int? Links { get; init; }

    /// <summary>Diameter in the crown in the direction of pull, in millimetres, d1: there the links wear each other.</summary>
    public double? D1Mm { get; init; }

    /// <summary>Diameter in the crown at right angles to it, in millimetres, d2.</summary>
    public double? D2Mm { get; init; }

    /// <summary>A measure's value in millimetres; null where it was not measured. The mean takes both diameters.</summary>
    public double? ValueMm(LinkMeasure measure) => measure switch
    {
        LinkMeasure.OneLink => OneLinkMm,
        LinkMeasure.SeveralLinks => SeveralLinksMm,
        LinkMeasure.MeanDiameter => (D1Mm + D2Mm) / 2,
        _ => D1Mm is { } d1 && D2Mm is { } d2 ? Math.Min(d1, d2) : D1Mm ?? D2Mm,
    };
}
