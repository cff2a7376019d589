namespace WearWatch.Chains;

/// <summary>What a card says once its events have happened.</summary>
public static class CardAfterEvents
{
    /// <summary>The card of the chain that runs after these events: with the lot that the last replacement told.</summary>
    /// <param name="card">The card.</param>
    /// <param name="events">The chain's events in the order in which they happened.</param>
    public static ChainCard After(this ChainCard card, IEnumerable<ChainEvent> events) =>
        events.LastOrDefault(e => e.Kind == ChainEventKind.Replacement && (e.At is null || e.At != card.FittedAt)) is { } swap
            ? card with { Lot = swap.Lot }
            : card;
}
