namespace WearWatch.Plant.Bench;

/// <summary>How much oil.</summary>
/// <param name="Text">The amount in words, with its unit.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Verified">Whether it was read there; false for a recalled one.</param>
public sealed record OilAmountJson(Phrase Text, string Source, bool Verified);
