using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineering;

/// <summary>One life.</summary>
/// <param name="Number">Which of the position's fitted chains, from 0.</param>
/// <param name="Life">How long it lasted and how it ended.</param>
/// <param name="Lot">The supplier's lot of the chain, or empty.</param>
/// <param name="FittedAt">When it was fitted, if that was told.</param>
/// <param name="FittingKnown">Whether its hours count from its fitting; if not they are too few, and the life is left out.</param>
public sealed record BookedLife(int Number, Life Life, bool FittingKnown, string Lot = "", DateTimeOffset? FittedAt = null);
