namespace WearWatch.Plant.Bench;

/// <summary>One value of a chain type.</summary>
/// <param name="Name">What it is; its unit stands at the end.</param>
/// <param name="Value">The value.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Verified">Whether it was read there; false for one that was recalled.</param>
public sealed record ChainValueJson(string Name, double Value, string Source, bool Verified);
