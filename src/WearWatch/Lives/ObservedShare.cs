using MathNet.Numerics.Distributions;

namespace WearWatch.Lives;

/// <summary>A share by count: how many of how many.</summary>
/// <param name="Hits">How many.</param>
/// <param name="Of">Of how many; zero when there was nothing to count.</param>
public readonly record struct ObservedShare(int Hits, int Of)
{
    /// <summary>The share, 0 to 1; not a number of nothing.</summary>
    public double Fraction => Of == 0 ? double.NaN : (double)Hits / Of;

    /// <summary>Counts what of a list meets a condition.</summary>
    public static ObservedShare In<T>(IReadOnlyCollection<T> all, Func<T, bool> hit) => new(all.Count(hit), all.Count);

    /// <summary>
    /// Exact binomial interval for the share behind the count: it holds the truth at least as often as it says.
    /// </summary>
    /// <remarks>
    /// The ends are the beta quantiles <c>B((1-level)/2; k, n-k+1)</c> and <c>B((1+level)/2; k+1, n-k)</c>. Source: C. J.
    /// Clopper, E. S. Pearson, Biometrika 26 (1934) 404 (from memory). It takes the cases as independent.
    /// </remarks>
    /// <param name="level">Confidence, such as 0.95.</param>
    public ConfidenceInterval Band(double level) => new(
        Hits == 0 ? 0 : Beta.InvCDF(Hits, Of - Hits + 1, (1 - level) / 2),
        Hits == Of ? 1 : Beta.InvCDF(Hits + 1, Of - Hits, (1 + level) / 2));
}
