namespace WearWatch.Plant.Books;

/// <summary>The lives of the whole plant as they stood at one moment.</summary>
/// <param name="Version">Grows with every change, so that what was worked out from it can be kept until then.</param>
/// <param name="Chains">All chains, by name.</param>
public sealed record FleetLives(int Version, IReadOnlyList<BookedChain> Chains);
