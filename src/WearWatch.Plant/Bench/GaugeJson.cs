using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>What a measured length means.</summary>
public sealed record GaugeJson(
    double ElongationPct, double StandardUncertaintyPct, double ExpandedUncertaintyPct, double ScatterPct, double LengthMm,
    double NominalMm,
    double LimitPct, string Condition, string Verdict, string? Doubt, IReadOnlyList<UncertaintyJson> Budget,
    SpanProposalJson Proposal, string Held,
    double? LinkWearPct)
{
    public static GaugeJson Of(GaugeCalculation sheet) => new(
        sheet.Elongation.Percent, sheet.Elongation.StandardUncertaintyPercent, sheet.Elongation.ExpandedUncertaintyPercent,
        sheet.Elongation.ScatterPercent, sheet.Span.LengthMm, sheet.Span.NominalMm, sheet.Limit.Percent,
        FileWords.Of(sheet.Condition),
        sheet.Verdict, sheet.Doubt,
        [.. sheet.Budget.Components
            .Select(c => new UncertaintyJson(c.Name, c.StandardUncertaintyPercent, 100 * sheet.Budget.ShareOf(c), c.Source))],
        new SpanProposalJson(
            sheet.Proposal.Pitches, sheet.Proposal.LengthMm, sheet.Proposal.StandardUncertaintyPercent, sheet.Proposal.GoodEnough,
            sheet.Proposal.Advice),
        sheet.HeldAdvice, sheet.LinkWear?.Percent);
}

/// <summary>One line of an uncertainty budget.</summary>
public sealed record UncertaintyJson(string Component, double StandardUncertaintyPct, double ShareOfVariancePct, string Source);

/// <summary>How many pitches to measure.</summary>
public sealed record SpanProposalJson(
    int Pitches, double LengthMm, double StandardUncertaintyPct, bool GoodEnough, string Advice);
