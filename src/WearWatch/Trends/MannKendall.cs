using MathNet.Numerics.Distributions;

namespace WearWatch.Trends;

/// <summary>Whether values rise or fall over time at all, whatever the shape: the Mann-Kendall test.</summary>
/// <remarks>
/// <c>S = sum over i &lt; j of sign(yj - yi)</c>; <c>var S = (n(n-1)(2n+5) - sum t(t-1)(2t+5)) / 18</c>, t the sizes of groups of
/// equal values; <c>Z = (S -+ 1) / sqrt(var S)</c>, towards zero. Source: mathcs.holycross.edu/~little/Montserrat/MannKendallByHand.txt.
/// </remarks>
/// <param name="Score">S: rises less falls over all pairs.</param>
/// <param name="Variance">Variance of S when there is no trend.</param>
public sealed record MannKendall(int Score, double Variance)
{
    /// <summary>S in standard deviations, corrected for S being a whole number; zero when all values are equal.</summary>
    public double Z => Score == 0 || Variance == 0 ? 0 : (Score - Math.Sign(Score)) / Math.Sqrt(Variance);

    /// <summary>Probability of a Z as far from zero, either way, when there is no trend.</summary>
    public double PTwoSided => 2 * Normal.CDF(0, 1, -Math.Abs(Z));

    /// <summary>Tests values in the order in which they were taken.</summary>
    public static MannKendall Of(ReadOnlySpan<double> values)
    {
        var score = 0;
        for (var i = 0; i < values.Length; i++)
        {
            for (var j = i + 1; j < values.Length; j++) score += Math.Sign(values[j] - values[i]);
        }

        static double Pairs(double n) => n * (n - 1) * (2 * n + 5);
        var ties = values.ToArray().GroupBy(v => v).Sum(group => Pairs(group.Count()));
        return new MannKendall(score, (Pairs(values.Length) - ties) / 18);
    }
}
