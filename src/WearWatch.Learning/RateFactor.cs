namespace WearWatch.Learning;

/// <summary>How much one input makes a chain wear faster or slower than the fleet's average chain.</summary>
/// <param name="Input">The input in words, as <c>relative load</c> or <c>lubrication</c>.</param>
/// <param name="Told">Whether the card tells it; if not, the average is taken.</param>
/// <param name="Factor">The factor on the wear rate; above 1 is faster.</param>
public sealed record RateFactor(string Input, bool Told, double Factor);
