namespace WearWatch.Planning.Supply;

/// <summary>So much of a part.</summary>
public sealed record PartNeed(Part Part, int Quantity);
