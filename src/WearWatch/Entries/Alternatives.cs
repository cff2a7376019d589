using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>What else is known when a reading is entered, so that more slips can be tried.</summary>
public sealed record Alternatives
{
    /// <summary>Nothing else.</summary>
    public static Alternatives Unknown { get; } = new();

    /// <summary>
    /// Chains whose reading it may be instead, such as the neighbours on the line, with what each is expected to show.
    /// </summary>
    public IReadOnlyList<NeighbourReading> OtherChains { get; init; } = [];

    /// <summary>The number of pitches over which this chain is usually measured; null when it is not known.</summary>
    public int? UsualPitches { get; init; }

    /// <summary>The other strands and places of the chain, with what they would show.</summary>
    public IReadOnlyList<(Phrase Words, Expectation Expected)> OtherStrands { get; init; } = [];

    /// <summary>What a chain would show that was fitted since the last reading.</summary>
    public Expectation IfReplaced { get; init; } = Expectation.NewChain;

    /// <summary>
    /// What the chain would show if the hour counter had been set back since the last reading; null when it cannot be said.
    /// </summary>
    public Expectation? IfCounterWasReset { get; init; }

    /// <summary>
    /// What the hours that can have passed say of the counter; null when it has none, or nothing was told before.
    /// </summary>
    public CounterEvidence? Counter { get; init; }
}
