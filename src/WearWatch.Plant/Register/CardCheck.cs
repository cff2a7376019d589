using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Register;

/// <summary>What a card must have before a person's word puts it into the register.</summary>
internal static class CardCheck
{
    private const int LongestText = 200;

    /// <summary>What is wrong with a card; empty when it can be kept.</summary>
    public static IEnumerable<Refusal> Faults(ChainCard card, DateTimeOffset now)
    {
        if (card.LimitPercent is not null && card.LimitSetReason.Trim().Length == 0)
            yield return new("limit_set_reason", $"Say why the plant set its own limit, or leave the limit to the rules.");
        foreach (var fault in card.LinkFaults) yield return new(LinkColumns.Of(fault), fault.Reason);
        if (Clocks.FaultOf(card.FittedAt, now) is { } time) yield return new("fitted_at", time);
        foreach (var (column, reason) in LiftingCard.Faults(card)) yield return new(column, reason);
    }

    /// <summary>What speaks against a card that says of a chain that it lifts or holds nothing any more.</summary>
    /// <param name="before">The card as it stood; null for a chain that is new.</param>
    /// <param name="after">The card as it should be.</param>
    /// <param name="isPlanner">Whether a planner says so.</param>
    public static IEnumerable<Refusal> TurnedOffFaults(ChainCard? before, ChainCard after, bool isPlanner)
    {
        var stood = before?.HoldsLoad ?? after.Family.LiftsByNature;
        if (isPlanner || !stood || after.HoldsLoad) yield break;
        yield return new(
            after.Family.LiftsByNature ? "not_lifting_reason" : "lifts",
            $"It lifts or holds a load: only a planner takes that from its master data, with the reason.");
    }

    /// <summary>What is wrong with the name of a chain that is new.</summary>
    public static IEnumerable<Refusal> NameFaults(string name)
    {
        if (name.Trim().Length == 0) yield return new("chain", $"Write the name that stands on the label.");
        if (name != name.Trim()) yield return new("chain", $"A name neither begins nor ends with a blank.");
        if (name.Length > LongestText) yield return new("chain", $"Longer than {LongestText} characters.");
        if (name.IndexOfAny(['/', '\\', '?', '#', '%']) >= 0 || name is "new" or "." or "..")
            yield return new("chain", $"The name is part of the page's address: not 'new', and without / \\ ? # %.");
    }

    /// <summary>What is wrong with who and why.</summary>
    public static IEnumerable<Refusal> WordFaults(string by, string why, bool needsWhy)
    {
        if (by.Trim().Length is 0 or > LongestText) yield return new("by", $"Say who in 1 to {LongestText} characters.");
        if (needsWhy && why.Trim().Length == 0)
            yield return new("why", $"Say why in a few words: it stays in the record of changes.");
        if (why.Length > LongestText) yield return new("why", $"Longer than {LongestText} characters.");
    }
}
