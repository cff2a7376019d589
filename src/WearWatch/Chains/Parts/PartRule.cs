using WearWatch.Phrases;

namespace WearWatch.Chains.Parts;

/// <summary>
/// What a kind of chain says of one of its parts: that it is measured, and the trade's limit where one was read.
/// </summary>
/// <param name="Part">Which part.</param>
public sealed record PartRule(WearPart Part)
{
    /// <summary>The limit as a share of the size when new, of the slack of the centre distance; null for none.</summary>
    public double? Share { get; init; }

    /// <summary>The limit in millimetres; null for none.</summary>
    public double? Mm { get; init; }

    /// <summary>The rule in plain words, or empty.</summary>
    public Phrase Rule { get; init; } = Phrase.None;

    /// <summary>Who says so, or empty.</summary>
    public string Source { get; init; } = "";
}
