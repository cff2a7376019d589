namespace WearWatch.Chains;

/// <summary>What to say about the sprockets when a chain is swapped.</summary>
/// <remarks>Source: docs/references.md [28], [36]: check them at every change, no new chain on worn teeth, no new on old chain.
/// That a third chain calls
/// for more care is common practice.</remarks>
public static class SprocketAdvice
{
    /// <summary>The advice for a chain at an elongation.</summary>
    /// <param name="family">The kind of chain.</param>
    /// <param name="elongationPercent">Its elongation in percent; null when it is not known.</param>
    /// <param name="chainsOnTheseSprockets">
    /// How many chains, this one included, have run on these sprockets; null when not recorded.
    /// </param>
    public static string For(ChainFamily family, double? elongationPercent = null, int? chainsOnTheseSprockets = null)
    {
        if (family == ChainFamily.Leaf)
            return "Look at the sheaves and anchors; replace the chains of a pair together and never splice new to old.";
        const string always =
            "Look at the teeth before the new chain goes on. Hooked or thinned teeth: replace the sprockets too, "
            + "for a new chain on them wears early. Never join new chain to old.";
        if (elongationPercent > 2) return "Above 2 % change chain and sprockets together. " + always;
        return chainsOnTheseSprockets >= 3 ? "This is at least the third chain on these sprockets. " + always : always;
    }
}
