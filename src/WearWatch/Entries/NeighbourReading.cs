using WearWatch.Chains;

namespace WearWatch.Entries;

/// <summary>A chain on the same line whose reading an entry may be.</summary>
/// <param name="Card">The chain.</param>
/// <param name="Expected">What it is expected to show.</param>
/// <param name="Weight">How much easier than any other of the line it is taken for the one that was meant; 1 or more.</param>
/// <param name="CountFactor">How much the number of pitches speaks for it, against the chain that was told.</param>
public sealed record NeighbourReading(ChainCard Card, Expectation Expected, double Weight = 1, double CountFactor = 1)
{
    /// <summary>Chains of one pitch stand beside each other on the list and can be mixed up by their look.</summary>
    private const double SamePitch = 4;

    private const double CountSpeaksFor = 10;
    private const double CountSpeaksAgainst = 0.3;

    /// <summary>A neighbour, with what the entry itself says for and against it. The factors are common practice.</summary>
    /// <param name="other">The neighbour.</param>
    /// <param name="expected">What it is expected to show.</param>
    /// <param name="told">The chain that was told.</param>
    /// <param name="isItsCount">Whether the neighbour is measured over so many pitches; null where it has no usual count.</param>
    /// <param name="isOwnCount">The same of the chain that was told.</param>
    public static NeighbourReading Of(
        ChainCard other, Expectation expected, ChainCard told, bool? isItsCount, bool? isOwnCount) => new(
        other, expected, Math.Abs(told.PitchMm - other.PitchMm) < 0.01 ? SamePitch : 1,
        (isItsCount, isOwnCount) switch { (true, false) => CountSpeaksFor, (false, true) => CountSpeaksAgainst, _ => 1 });
}
