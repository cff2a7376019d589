using WearWatch.Chains;
using WearWatch.Chains.Families;
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
    public required Phrase? Doubt { get; init; }

    /// <summary>What the uncertainty is made of.</summary>
    public required UncertaintyBudget Budget { get; init; }

    /// <summary>The limit it is held against.</summary>
    public required ReplacementLimit Limit { get; init; }

    /// <summary>What else was weighed.</summary>
    public required LimitVerdict Limits { get; init; }

    /// <summary>What the measures of its links say, when some were taken.</summary>
    public required LinkCalculation? Links { get; init; }

    /// <summary>Over how many pitches it is best measured.</summary>
    public required SpanProposal Proposal { get; init; }

    /// <summary>How the chain was held, and how it is best held.</summary>
    public Phrase HeldAdvice =>
        $"Held: {Span.Held.Words}. {(Type is null ? MeasuringLoad.AdviceWithoutType : MeasuringLoad.Advice(Type))}";

    /// <summary>Whether the expanded uncertainty stays below a tenth of the limit as it was measured.</summary>
    public bool IsGoodEnough => Elongation.ExpandedUncertaintyPercent < SpanProposal.ShareOfLimit * Limit.Percent;

    /// <summary>Values that the figures rest on and that were only recalled, in words; empty when all were read.</summary>
    public IReadOnlyList<Phrase> FromMemory =>
    [
        .. Type?.PitchMm is { IsVerified: false } ? [Phrase.Of($"pitch")] : Array.Empty<Phrase>(),
        .. Span.New is null && !(Type?.NewLengthTolerancePercent ?? Span.Family.NewLengthTolerancePercent).IsVerified
            ? [Phrase.Of($"tolerance of a new chain")]
            : Array.Empty<Phrase>(),
        .. Limit.IsVerified ? Array.Empty<Phrase>() : [Phrase.Of($"limit")],
    ];

    /// <summary>Whether it lifts or holds a load, by its kind or as told.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>The points of its checklist at which something was found.</summary>
    public required IReadOnlyList<CheckPoint> Found { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says; with the verdict, not below it.</summary>
    public IReadOnlyList<Phrase> Cautions => Caution.For(Span.Family, HoldsLoad);

    /// <summary>The worst of elongation, diameter and findings. How fast it wears is not asked; a forecast knows more.</summary>
    public Condition Condition => Statements.MaxBy(s => GaugeVerdict.SeverityOf(s.Condition)).Condition;

    /// <summary>How it is told.</summary>
    public ShownCondition ShownCondition => ConditionWords.Of(Condition, HoldsLoad);

    /// <summary>The verdict, the worst first.</summary>
    public Phrase Verdict => Phrase.Join(" ", Statements.OrderByDescending(s => GaugeVerdict.SeverityOf(s.Condition))
        .Select(s => s.Words));

    private IReadOnlyList<(Condition Condition, Phrase Words)> Statements => GaugeVerdict.Of(this);
}
