using WearWatch.Phrases;

namespace WearWatch.Chains.Families;

/// <summary>What to say about toothed wheels when a chain is swapped.</summary>
/// <remarks>
/// Source: docs/references.md [28], [36]: check them at every change, no new chain on worn teeth, no new on old chain. That a
/// third chain calls for more care is common practice.
/// </remarks>
internal static class SprocketAdvice
{
    private static readonly Phrase Always =
        $"Look at the teeth before the new chain goes on. Hooked or thinned teeth: replace the sprockets too, "
        + $"for a new chain on them wears early. Never join new chain to old.";

    /// <summary>The advice for a chain at an elongation.</summary>
    /// <param name="elongationPercent">Its elongation in percent; null when it is not known.</param>
    /// <param name="chainsOnTheseSprockets">
    /// How many chains, this one included, have run on these sprockets; null when not recorded.
    /// </param>
    public static Phrase OnTeeth(double? elongationPercent, int? chainsOnTheseSprockets)
    {
        if (elongationPercent > 2) return $"Above 2 % change chain and sprockets together. " + $"{Always}";
        return chainsOnTheseSprockets >= 3 ? $"This is at least the third chain on these sprockets. " + $"{Always}" : Always;
    }
}
