namespace WearWatch.Chains;

/// <summary>What was applied at an oiling, as far as it was told.</summary>
/// <param name="Method">How; null when it was not told.</param>
/// <param name="Grade">Which oil, such as <c>ISO VG 100</c>; or empty.</param>
/// <param name="AmountMl">How much, in millilitres; null when it was not told.</param>
public sealed record OilApplied(OilMethod? Method = null, string Grade = "", double? AmountMl = null)
{
    /// <summary>More at once is a slip of the pen: a hundred litres.</summary>
    public const double MostMl = 100_000;

    /// <summary>Whether it is told that nothing arrived: a lubricator strokes, and its line is blocked or it is empty.</summary>
    public bool IsDry => AmountMl is 0;

    /// <summary>Nothing was told.</summary>
    public static OilApplied Untold { get; } = new();
}
