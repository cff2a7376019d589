namespace WearWatch.Chains;

/// <summary>
/// What was told of the parts that run now where the card says otherwise: a person changes the card by it, no program does.
/// </summary>
/// <param name="Pitches">Pitches of the chain fitted last; null where they were not told or stand on the card.</param>
/// <param name="Teeth">Teeth of the sprocket fitted last; null where they were not told or stand on the card.</param>
public sealed record FittedParts(int? Pitches, int? Teeth)
{
    /// <summary>For a chain.</summary>
    /// <param name="card">Its card as it is now.</param>
    /// <param name="events">What happened to it, in the order in which it happened.</param>
    public static FittedParts Unlike(ChainCard card, IReadOnlyList<ChainEvent> events)
    {
        var pitches = events.LastOrDefault(e => e.Kind == ChainEventKind.Replacement)?.NewPitches;
        var teeth = events.LastOrDefault(e => e.Kind == ChainEventKind.SprocketReplaced)?.NewTeeth;
        return new FittedParts(
            pitches == card.Pitches ? null : pitches, teeth is { } told && card.SprocketTeeth.Contains(told) ? null : teeth);
    }
}
