using System.Globalization;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Gauging;
using WearWatch.Plant.Bench;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Workbench.Gauging;

/// <summary>What the gauge's page says of a measurement.</summary>
public sealed record GaugeView
{
    public required string Figure { get; init; }

    public required string Expanded { get; init; }

    public required ShownCondition Condition { get; init; }

    public required Phrase Verdict { get; init; }

    /// <summary>Whether the length is doubted, so that a person has to say that it is right.</summary>
    public required bool Doubted { get; init; }

    /// <summary>What was measured, in a line.</summary>
    public required Phrase Measured { get; init; }

    public required IReadOnlyList<BudgetLine> Budget { get; init; }

    public required string Combined { get; init; }

    public required Phrase Proposal { get; init; }

    public required bool GoodEnough { get; init; }

    /// <summary>What to do better next time; empty for nothing.</summary>
    public required IReadOnlyList<Phrase> Remarks { get; init; }

    public static GaugeView Of(GaugeCalculation worked, UnitPreference units) => new()
    {
        Figure = Show.Percent(worked.Elongation.Percent),
        Expanded = Percent(worked.Elongation.ExpandedUncertaintyPercent, "0.00"),
        Condition = worked.ShownCondition,
        Verdict = worked.Verdict,
        Doubted = worked.Doubt is not null,
        Measured = worked.Span.New is { } fresh
            ? Phrase.Of($"{units.OfLength(worked.Span.LengthMm)} over {worked.Span.Pitches:#,0} pitches of "
                + $"{units.OfLength(worked.Span.PitchMm)}, {units.OfLength(fresh.LengthMm)} when new.")
            : $"{units.OfLength(worked.Span.LengthMm)} over {worked.Span.Pitches:#,0} pitches of "
                + $"{units.OfLength(worked.Span.PitchMm)}, nominal {units.OfLength(worked.Span.NominalMm)}.",
        Budget = [.. worked.Budget.Components.Select(c => new BudgetLine(
            $"{c.Name}", Percent(c.StandardUncertaintyPercent, "0.0000"), 100 * worked.Budget.ShareOf(c), c.Repeats,
            $"{c.Source}"))],
        Combined = Percent(worked.Elongation.StandardUncertaintyPercent, "0.0000"),
        Proposal = ProposalOf(worked, units),
        GoodEnough = worked.IsGoodEnough,
        Remarks = [.. RemarksOn(worked)],
    };

    private static Phrase ProposalOf(GaugeCalculation worked, UnitPreference units)
    {
        var (proposal, length) = (worked.Proposal, units.OfLength(worked.Proposal.LengthMm));
        var span = proposal.GoodEnough
            ? Phrase.Of($"{proposal.Pitches:#,0} pitches ({length}), with an uncertainty of "
                + $"± {proposal.ExpandedUncertaintyPercent:0.00} %, below a tenth of the limit.")
            : $"{proposal.Pitches:#,0} pitches ({length}), with an uncertainty of "
                + $"± {proposal.ExpandedUncertaintyPercent:0.00} %, not below a tenth of the limit.";
        return worked.IsGoodEnough ? Phrase.Of($"The usual span: {span}") : $"Measure more: {span}";
    }

    private static IEnumerable<Phrase> RemarksOn(GaugeCalculation worked)
    {
        var span = worked.Span;
        if (span.LinksAlternate && int.IsOddInteger(span.Pitches))
        {
            yield return span.FirstLink == FirstLink.NotTold
                ? Phrase.Of($"An odd number of pitches: only every other link grows, so the reading may be off by one part in "
                    + $"the number of pitches. Measure an even number, or say with which link it begins.")
                : $"An odd number of pitches, corrected for the link that it begins with. An even number needs no correction.";
        }

        if (!worked.Proposal.WhyNot.IsEmpty) yield return worked.Proposal.WhyNot;
        if (span.ChainTemperatureC is null) yield return $"No temperature given: chain and tool are taken as equally warm.";
        if (worked.FromMemory.Count > 0)
            yield return $"From memory, not verified: {Phrase.Join(", ", worked.FromMemory)}. Judge it before you rely on it.";
        yield return $"Measure the worst place of the chain, taut, clean, with no offset link inside the length.";
    }

    private static string Percent(double value, string format) => value.ToString(format, CultureInfo.CurrentCulture) + " %";
}

/// <summary>A line of the uncertainty budget.</summary>
/// <param name="Name">What is uncertain.</param>
/// <param name="Uncertainty">Its standard uncertainty.</param>
/// <param name="SharePercent">Its share of the variance.</param>
/// <param name="Repeats">Whether it comes anew with every reading.</param>
/// <param name="Source">Where its size comes from.</param>
public sealed record BudgetLine(Phrase Name, string Uncertainty, double SharePercent, bool Repeats, Phrase Source);
