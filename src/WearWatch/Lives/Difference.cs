using MathNet.Numerics.Distributions;

namespace WearWatch.Lives;

/// <summary>By how much two groups differ, with its interval.</summary>
/// <param name="Value">The difference or the ratio.</param>
/// <param name="Interval">Its interval.</param>
/// <param name="None">The value of no difference: 0 of a difference, 1 of a ratio.</param>
public readonly record struct Difference(double Value, ConfidenceInterval Interval, double None)
{
    /// <summary>Fewer chains with hours than this tell no rate of cost: resampled, they come out alike by themselves.</summary>
    public const int FewestChains = 5;

    private const int Resamples = 400;
    private const int Seed = 29;

    /// <summary>Whether the interval leaves no difference out.</summary>
    public bool IsSeen => !Interval.Contains(None);

    /// <summary>
    /// Ratio of two groups' geometric means, the second over the first; null with fewer than two values in either.
    /// </summary>
    /// <remarks>Welch's interval on the logarithms. Source: B. L. Welch, Biometrika 34 (1947) 28 (from memory).</remarks>
    /// <param name="first">Logarithms of the first group's values.</param>
    /// <param name="second">Of the second's.</param>
    /// <param name="level">Confidence, such as 0.90.</param>
    public static Difference? RatioOfMeans(IReadOnlyCollection<double> first, IReadOnlyCollection<double> second, double level)
    {
        if (first.Count < 2 || second.Count < 2) return null;
        var (one, other) = (ErrorSquared(first), ErrorSquared(second));
        var between = second.Average() - first.Average();
        if (one + other == 0) return new(Math.Exp(between), new(Math.Exp(between), Math.Exp(between)), 1);
        var freedom = Square(one + other) / (Square(one) / (first.Count - 1) + Square(other) / (second.Count - 1));
        var reach = StudentT.InvCDF(0, 1, freedom, (1 + level) / 2) * Math.Sqrt(one + other);
        return new(Math.Exp(between), new(Math.Exp(between - reach), Math.Exp(between + reach)), 1);
    }

    /// <summary>
    /// Ratio of two estimates that have intervals of their own, the second over the first: their distances add as squares on the
    /// logarithm.
    /// </summary>
    public static Difference Ratio(
        (double Value, ConfidenceInterval Interval) first, (double Value, ConfidenceInterval Interval) second)
    {
        var ratio = second.Value / first.Value;
        var down = Math.Sqrt(
            Square(Math.Log(second.Value / second.Interval.Low)) + Square(Math.Log(first.Interval.High / first.Value)));
        var up = Math.Sqrt(
            Square(Math.Log(second.Interval.High / second.Value)) + Square(Math.Log(first.Value / first.Interval.Low)));
        return new(ratio, new(ratio * Math.Exp(-down), ratio * Math.Exp(up)), 1);
    }

    /// <summary>Difference of two shares, the second less the first; null where either counts nothing.</summary>
    /// <remarks>
    /// The hybrid of two Wilson intervals. Source: R. G. Newcombe, Statistics in Medicine 17 (1998) 873, method 10.
    /// </remarks>
    public static Difference? OfShares(ObservedShare first, ObservedShare second, double level)
    {
        if (first.Of == 0 || second.Of == 0) return null;
        var (one, other) = (Wilson(first, level), Wilson(second, level));
        var (p1, p2) = (first.Fraction, second.Fraction);
        return new(
            p2 - p1,
            new(
                p2 - p1 - Math.Sqrt(Square(p2 - other.Low) + Square(one.High - p1)),
                p2 - p1 + Math.Sqrt(Square(other.High - p2) + Square(p1 - one.Low))),
            0);
    }

    /// <summary>
    /// Ratio of two groups' costs an hour, the second over the first, by resampling whole chains; null where fewer than
    /// <see cref="FewestChains"/> chains of either ran, or either cost nothing.
    /// </summary>
    /// <remarks>
    /// Percentile bootstrap, 400 resamples of a fixed seed: the swaps of one chain go together. Source: B. Efron, Ann. Statist. 7
    /// (1979) 1 (from memory).
    /// </remarks>
    /// <param name="first">Cost and hours of each chain of the first group.</param>
    /// <param name="second">Of the second.</param>
    /// <param name="level">Confidence, such as 0.90.</param>
    public static Difference? RatioOfRates(
        IReadOnlyList<(double Cost, double Hours)> first, IReadOnlyList<(double Cost, double Hours)> second, double level)
    {
        if (!CanTell(first) || !CanTell(second)) return null;
        var chance = new Random(Seed);
        double[] drawn = [.. Enumerable.Range(0, Resamples).Select(_ => Rate(Drawn(second, chance)) / Rate(Drawn(first, chance)))
            .Where(double.IsFinite).Order()];
        if (drawn.Length == 0) return null;
        double At(double share) => drawn[Math.Clamp((int)(share * drawn.Length), 0, drawn.Length - 1)];
        return new(Rate(second) / Rate(first), new(At((1 - level) / 2), At((1 + level) / 2)), 1);
    }

    private static ConfidenceInterval Wilson(ObservedShare share, double level)
    {
        var z = Normal.InvCDF(0, 1, (1 + level) / 2);
        var (p, n) = (share.Fraction, (double)share.Of);
        var middle = (p + z * z / (2 * n)) / (1 + z * z / n);
        var reach = z / (1 + z * z / n) * Math.Sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        return new(middle - reach, middle + reach);
    }

    private static bool CanTell(IReadOnlyCollection<(double Cost, double Hours)> chains) =>
        chains.Count(c => c.Hours > 0) >= FewestChains && chains.Any(c => c.Cost > 0);

    private static double Rate(IReadOnlyCollection<(double Cost, double Hours)> chains) =>
        chains.Sum(c => c.Cost) / chains.Sum(c => c.Hours);

    private static (double Cost, double Hours)[] Drawn(IReadOnlyList<(double Cost, double Hours)> chains, Random chance) =>
        [.. Enumerable.Range(0, chains.Count).Select(_ => chains[chance.Next(chains.Count)])];

    private static double ErrorSquared(IReadOnlyCollection<double> values)
    {
        var mean = values.Average();
        return values.Sum(v => Square(v - mean)) / (values.Count - 1) / values.Count;
    }

    private static double Square(double value) => value * value;
}
