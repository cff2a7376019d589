namespace WearWatch.Plant.Bench;

/// <summary>A stretch of the catalogue.</summary>
/// <param name="Total">How many types were found.</param>
/// <param name="Skip">How many of them stand before this stretch.</param>
/// <param name="ChainTypes">The types.</param>
public sealed record ChainTypePageJson(int Total, int Skip, IReadOnlyList<ChainTypeJson> ChainTypes);
