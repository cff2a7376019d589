namespace WearWatch.Plant.Planning;

/// <summary>Where the swap of a chain is to stand.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Shutdown">The id of the shutdown; null for not within the horizon.</param>
/// <param name="Placing">How firmly: <c>proposed</c>, <c>by_hand</c> (when left out) or <c>locked</c>.</param>
/// <param name="Note">Why; the note that stands is kept when it is left out.</param>
public sealed record SwapEntryJson(string? Chain, string? Shutdown = null, string? Placing = null, string? Note = null);
