using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>A condition as it is shown of a chain. Made by <see cref="ConditionWords"/> alone.</summary>
/// <param name="Condition">The condition: how severe it is.</param>
/// <param name="HoldsLoad">Whether it is told of a chain that lifts or holds a load.</param>
/// <param name="Words">In words, for screens, papers and notices.</param>
/// <param name="Wire">The word of the API, the files and the addresses, such as <c>plan_a_swap</c>.</param>
/// <param name="Colour">The colour; of a chain that lifts never green.</param>
/// <param name="Meaning">What it asks for, in a sentence.</param>
public sealed record ShownCondition(
    Condition Condition, bool HoldsLoad, Phrase Words, string Wire, SignalColour Colour, Phrase Meaning)
{
    /// <summary>The word of an address and of a style sheet, such as <c>plan-a-swap</c>.</summary>
    public string Style => Wire.Replace('_', '-');

    /// <summary>The classes of the style sheets: its word, and its colour as <c>tone-yellow</c>.</summary>
    public string Classes => $"{Style} tone-{Colour.ToString().ToLowerInvariant()}";
}
