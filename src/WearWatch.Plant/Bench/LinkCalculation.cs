using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Links;
using WearWatch.Links;
using WearWatch.Wear;

namespace WearWatch.Plant.Bench;

/// <summary>What measures of a round-link chain's links mean, each against its own limit.</summary>
public sealed record LinkCalculation
{
    /// <summary>Size and maker's limits.</summary>
    public required LinkTable Table { get; init; }

    /// <summary>The limits that govern, with what has to be said about them.</summary>
    public required LinkLimits Limits { get; init; }

    /// <summary>The worst first.</summary>
    public required LinkVerdict Verdict { get; init; }

    /// <summary>The kind of chain.</summary>
    public required ChainFamily Family { get; init; }

    /// <summary>Whether it lifts or holds a load.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>How the condition is told.</summary>
    public ShownCondition ShownCondition => ConditionWords.Of(Verdict.Condition, HoldsLoad);

    /// <summary>What to remember before it is touched, and what no figure says; with the verdict, not below it.</summary>
    public IReadOnlyList<Phrase> Cautions => Caution.For(Family, HoldsLoad);
}
