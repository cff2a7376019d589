namespace WearWatch.Plant.Bench;

/// <summary>What a measured length means. Elongations and uncertainties are percent of the nominal length.</summary>
public sealed record GaugeJson
{
    /// <summary>The elongation.</summary>
    public required double ElongationPct { get; init; }

    /// <summary>Its standard uncertainty.</summary>
    public required double StandardUncertaintyPct { get; init; }

    /// <summary>Its expanded uncertainty at coverage factor k = 2, about 95 %.</summary>
    public required double ExpandedUncertaintyPct { get; init; }

    /// <summary>Standard deviation from one reading to the next of the same chain.</summary>
    public required double ScatterPct { get; init; }

    /// <summary>The mean of the measured lengths.</summary>
    public required double LengthMm { get; init; }

    /// <summary>The nominal length over the same pitches.</summary>
    public required double NominalMm { get; init; }

    /// <summary>The limit that it is held against.</summary>
    public required double LimitPct { get; init; }

    /// <summary>The condition by this one measurement, as a word of the files.</summary>
    public required string Condition { get; init; }

    /// <summary>Whether it lifts or holds a load; then no answer is a release for use.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public required IReadOnlyList<Phrase> Caution { get; init; }

    /// <summary>The verdict, the worst of elongation, links and findings first.</summary>
    public required Phrase Verdict { get; init; }

    /// <summary>Why no chain runs so; null when one may.</summary>
    public required Phrase? Doubt { get; init; }

    /// <summary>What the uncertainty is made of.</summary>
    public required IReadOnlyList<UncertaintyJson> Budget { get; init; }

    /// <summary>How many pitches to measure next time.</summary>
    public required SpanProposalJson Proposal { get; init; }

    /// <summary>How the chain was held, and how it is best held.</summary>
    public required Phrase Held { get; init; }

    /// <summary>What the measures of its links say; null when none was taken.</summary>
    public required LinkGaugeJson? Links { get; init; }

    /// <summary>The values on which it rests that were recalled, not read.</summary>
    public required IReadOnlyList<Phrase> FromMemory { get; init; }

    /// <summary>The wire form of a calculation.</summary>
    public static GaugeJson Of(GaugeCalculation worked) => new()
    {
        ElongationPct = worked.Elongation.Percent,
        StandardUncertaintyPct = worked.Elongation.StandardUncertaintyPercent,
        ExpandedUncertaintyPct = worked.Elongation.ExpandedUncertaintyPercent,
        ScatterPct = worked.Elongation.ScatterPercent,
        LengthMm = worked.Span.LengthMm,
        NominalMm = worked.Span.NominalMm,
        LimitPct = worked.Limit.Percent,
        Condition = worked.ShownCondition.Wire,
        HoldsLoad = worked.HoldsLoad,
        Caution = worked.Cautions,
        Verdict = worked.Verdict,
        Doubt = worked.Doubt,
        Budget = [.. worked.Budget.Components
            .Select(c => new UncertaintyJson(c.Name, c.StandardUncertaintyPercent, 100 * worked.Budget.ShareOf(c), c.Source))],
        Proposal = new SpanProposalJson(
            worked.Proposal.Pitches, worked.Proposal.LengthMm, worked.Proposal.StandardUncertaintyPercent,
            worked.Proposal.GoodEnough, worked.Proposal.Advice),
        FromMemory = [.. worked.FromMemory],
        Held = worked.HeldAdvice,
        Links = worked.Links is { } links ? LinkGaugeJson.Of(links) : null,
    };
}
