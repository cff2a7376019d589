using WearWatch.Links;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>What measures of links mean.</summary>
public sealed record LinkGaugeJson
{
    /// <summary>The condition by these measures, as a word of the files.</summary>
    public required string Condition { get; init; }

    /// <summary>The verdict, the worst measure first.</summary>
    public required Phrase Verdict { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public required IReadOnlyList<Phrase> Caution { get; init; }

    /// <summary>Wear or stretch, in a sentence; null unless d1 and a length were measured.</summary>
    public required Phrase? Stretch { get; init; }

    /// <summary>Each measure that was taken, worst first.</summary>
    public required IReadOnlyList<LinkFindingJson> Measures { get; init; }

    /// <summary>What has to be said about the limits.</summary>
    public required IReadOnlyList<Phrase> Remarks { get; init; }

    /// <summary>The wire form of a calculation.</summary>
    public static LinkGaugeJson Of(LinkCalculation worked) => new()
    {
        Condition = worked.ShownCondition.Wire,
        Verdict = worked.Verdict.Sentence,
        Caution = worked.Cautions,
        Stretch = worked.Verdict.Stretch?.Sentence,
        Measures = [.. worked.Verdict.Findings.Select(LinkFindingJson.Of)],
        Remarks = worked.Limits.Remarks,
    };
}

/// <summary>One measure against its limit.</summary>
public sealed record LinkFindingJson
{
    /// <summary>one_link, several_links, mean_diameter or thinnest_diameter.</summary>
    public required string Measure { get; init; }

    /// <summary>Its value.</summary>
    public required double ValueMm { get; init; }

    /// <summary>Its expanded uncertainty at coverage factor k = 2, about 95 %.</summary>
    public required double ExpandedUncertaintyMm { get; init; }

    /// <summary>Growth of a length or loss of a diameter, in percent of new.</summary>
    public required double ChangePct { get; init; }

    /// <summary>How far it has come from new to its limit; null without a limit.</summary>
    public required double? UsedPct { get; init; }

    /// <summary>Its limit; null where none is known.</summary>
    public required double? LimitMm { get; init; }

    /// <summary>Who says so, and how sure it is.</summary>
    public required Phrase? LimitBasis { get; init; }

    /// <summary>The wire form of a finding.</summary>
    public static LinkFindingJson Of(LinkFinding finding) => new()
    {
        Measure = FileWords.Of(finding.Measure),
        ValueMm = finding.ValueMm,
        ExpandedUncertaintyMm = finding.ExpandedUncertaintyMm,
        ChangePct = finding.ChangePercent,
        UsedPct = finding.UsedPercent,
        LimitMm = finding.Limit?.Mm,
        LimitBasis = finding.Limit?.Basis,
    };
}
