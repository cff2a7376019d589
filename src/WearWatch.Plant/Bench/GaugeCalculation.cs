using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Plant.Bench;

/// <summary>What a measured length means.</summary>
public sealed record GaugeCalculation
{
    /// <summary>The chain type, when one was named.</summary>
    public required ChainType? Type { get; init; }

    /// <summary>What was measured.</summary>
    public required MeasuredSpan Span { get; init; }

    /// <summary>How far the chain has become longer, with its uncertainty.</summary>
    public required Elongation Elongation { get; init; }

    /// <summary>Why no chain runs so; null when one may, or a person said that the length is right.</summary>
    public required string? Doubt { get; init; }

    /// <summary>What the uncertainty is made of.</summary>
    public required UncertaintyBudget Budget { get; init; }

    /// <summary>The limit it is held against.</summary>
    public required ReplacementLimit Limit { get; init; }

    /// <summary>What else was weighed.</summary>
    public required LimitVerdict Limits { get; init; }

    /// <summary>The wear of a round link by its diameter, when one was measured.</summary>
    public required LinkWear? LinkWear { get; init; }

    /// <summary>How many pitches to measure so that the uncertainty stays below a tenth of the limit.</summary>
    public required SpanProposal Proposal { get; init; }

    /// <summary>How the chain was held, and how it is best held.</summary>
    public string HeldAdvice =>
        $"Held: {Span.Held}. " + (Type is null ? MeasuringLoad.AdviceWithoutType : MeasuringLoad.Advice(Type));

    /// <summary>Whether the uncertainty stays below a tenth of the limit as it was measured.</summary>
    public bool IsGoodEnough => Elongation.StandardUncertaintyPercent < SpanProposal.ShareOfLimit * Limit.Percent;

    /// <summary>
    /// What this one measurement says: <c>swap now</c> from the limit on, <c>plan a swap</c> where the expanded uncertainty
    /// reaches the limit or the rule says to plan from there. How fast it wears is not asked here; a forecast knows more.
    /// </summary>
    public Condition Condition =>
        Doubt is not null ? Condition.NotKnown
        : Elongation.Percent >= Limit.Percent ? Condition.SwapNow
        : Elongation.Percent + Elongation.ExpandedUncertaintyPercent >= Limit.Percent
        || Elongation.Percent >= Limit.PlanFromPercent ? Condition.PlanASwap
        : Condition.WithinLimit;

    /// <summary>The verdict in a sentence.</summary>
    public string Verdict => Doubt ?? FormattableString.Invariant(Condition switch
    {
        Condition.SwapNow => (FormattableString)$"{Elongation.Percent:0.00} % has reached the limit of {Limit.Percent:0.##} %.",
        Condition.PlanASwap when Elongation.Percent + Elongation.ExpandedUncertaintyPercent >= Limit.Percent =>
            $"Within the uncertainty the limit of {Limit.Percent:0.##} % may have been reached.",
        Condition.PlanASwap =>
            $"From {Limit.PlanFromPercent:0.##} % on a swap has to be planned; the limit is {Limit.Percent:0.##} %.",
        _ when Elongation.Percent <= 0 => $"No wear that could be seen; the limit is {Limit.Percent:0.##} %.",
        _ => $"{100 * Elongation.Percent / Limit.Percent:0} % of the way to the limit of {Limit.Percent:0.##} %.",
    });
}
