namespace WearWatch.Chains.Parts;

/// <summary>What the plant told of a part beside its readings: it stays until another is told.</summary>
/// <param name="NewMm">Its size when new in millimetres; null where nobody told.</param>
/// <param name="LimitMm">The plant's own limit in millimetres; null where it has none.</param>
/// <param name="LimitSource">Who says so, such as <c>maker's manual p. 12</c>; or empty.</param>
public sealed record PartTold(double? NewMm, double? LimitMm, string LimitSource)
{
    /// <summary>Nothing was told.</summary>
    public static PartTold Nothing { get; } = new(null, null, "");
}
