using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Rounds;

/// <summary>A chain that is measured before others, since a decision hangs on it.</summary>
/// <param name="Chain">The register's row.</param>
/// <param name="Worth">
/// By how much one more reading lowers the expected cost of its swap, in the plant's money; null for a chain that was never
/// measured.
/// </param>
/// <param name="Why">Why.</param>
public sealed record MeasureFirst(ChainRow Chain, double? Worth, Phrase Why);
