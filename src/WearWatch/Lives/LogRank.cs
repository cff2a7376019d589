using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace WearWatch.Lives;

/// <summary>Whether groups of chains last equally long, by their failures against those expected if they did.</summary>
/// <remarks>
/// At every failure each group is expected to bear its share n_j/n of the d failures; chi-square is the squared difference of
/// failures seen and expected, weighed by its hypergeometric covariance. It is about the whole curve, not one percentile, and
/// loses power where curves cross. Source: N. Mantel, Cancer Chemother. Rep. 50 (1966) 163; R. Peto, J. Peto, J. R. Stat. Soc. A
/// 135 (1972) 185 (both from memory).
/// </remarks>
/// <param name="ChiSquare">The test value.</param>
/// <param name="DegreesOfFreedom">Groups that could fail, less one.</param>
/// <param name="PValue">Probability of at least this difference if all groups last equally long.</param>
/// <param name="Observed">Failures seen, by group.</param>
/// <param name="Expected">Failures expected, by group.</param>
public sealed record LogRank(
    double ChiSquare, int DegreesOfFreedom, double PValue, IReadOnlyList<int> Observed, IReadOnlyList<double> Expected)
{
    /// <summary>
    /// Compares groups; with fewer than two that had chains at risk at a failure there is no difference to see (p = 1).
    /// </summary>
    public static LogRank Compare(IReadOnlyList<IReadOnlyCollection<Life>> groups)
    {
        var observed = groups.Select(g => g.Count(l => l.Failed)).ToList();
        var expected = new double[groups.Count];
        var covariance = Matrix<double>.Build.Dense(groups.Count, groups.Count);
        foreach (var (atRisk, failed) in Failures(groups)) Add(atRisk, failed, expected, covariance);

        var compared = Enumerable.Range(0, groups.Count).Where(j => covariance[j, j] > 0).ToList();
        if (compared.Count < 2) return new(0, 0, 1, observed, expected);
        // The differences of all groups sum to zero: the last is left out, or the covariance could not be inverted.
        compared.RemoveAt(compared.Count - 1);
        var difference = Vector<double>.Build.DenseOfEnumerable(compared.Select(j => observed[j] - expected[j]));
        var part = Matrix<double>.Build.Dense(compared.Count, compared.Count, (i, j) => covariance[compared[i], compared[j]]);
        var chiSquare = difference * part.Solve(difference);
        return new(chiSquare, compared.Count, 1 - ChiSquared.CDF(compared.Count, chiSquare), observed, expected);
    }

    private static IEnumerable<(int[] AtRisk, int Failed)> Failures(IReadOnlyList<IReadOnlyCollection<Life>> groups)
    {
        var atRisk = groups.Select(g => g.Count).ToArray();
        foreach (var moment in groups.SelectMany((g, j) => g.Select(life => (life, j))).GroupBy(e => e.life.Hours)
            .OrderBy(m => m.Key))
        {
            var failed = moment.Count(e => e.life.Failed);
            if (failed > 0) yield return (atRisk, failed);
            foreach (var (_, j) in moment) atRisk[j]--;
        }
    }

    private static void Add(int[] atRisk, int failed, double[] expected, Matrix<double> covariance)
    {
        double all = atRisk.Sum();
        var spread = all > 1 ? failed * (all - failed) / (all - 1) : 0;
        for (var i = 0; i < atRisk.Length; i++)
        {
            expected[i] += failed * atRisk[i] / all;
            for (var j = 0; j < atRisk.Length; j++)
                covariance[i, j] += spread * (atRisk[i] / all) * ((i == j ? 1 : 0) - atRisk[j] / all);
        }
    }
}
