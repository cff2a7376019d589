using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>What a card of a chain that lifts or holds a load must not say. Held wherever a card is entered.</summary>
/// <remarks>docs/safety.md.</remarks>
public static class LiftingCard
{
    /// <summary>What is wrong, each with its column of chains.csv; empty when the card may stand.</summary>
    public static IEnumerable<(string Column, Phrase Reason)> Faults(ChainCard card)
    {
        if (card.NotLiftingReason.Length > 0 && card.Family.AlwaysLifts)
            yield return (
                "not_lifting_reason", $"A {card.Family.Words} chain always lifts or holds a load: this cannot be said of it.");
        if (!card.HoldsLoad || card.LimitPercent is not { } own) yield break;
        var byRules = LimitRules.For(card with { LimitPercent = null }).Governing;
        if (own > byRules.Percent) yield return ("limit_pct", LimitTooHigh(byRules));
    }

    /// <summary>Why a limit of one's own cannot stand above what the rules say of a chain that lifts.</summary>
    /// <param name="byRules">The limit by the rules.</param>
    public static Phrase LimitTooHigh(ReplacementLimit byRules) =>
        $"It lifts or holds a load: a limit of your own may be lower than {byRules.Percent:0.##} % "
        + $"({SourceWords.Of(byRules.Source)}), never higher.";
}
