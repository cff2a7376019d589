namespace WearWatch.Wear;

/// <summary>Finds the odds of the wear clocks from how well each has explained each chain.</summary>
/// <remarks>
/// Expectation and maximisation, with what is believed without any chain as so many chains more:
/// <c>w_k = (sum_i softmax_k(LE_i + ln w) + a_k) / (n + sum a)</c>.
/// </remarks>
internal static class ClockOdds
{
    private const int Rounds = 60;

    /// <summary>The odds, and ln of the probability of all readings with them, that of the odds added.</summary>
    /// <param name="evidence">For every chain ln of the probability of its readings on every clock.</param>
    /// <param name="believed">a: how many chains of each clock the belief is worth.</param>
    public static (double[] Odds, double LogEvidence) Of(IReadOnlyList<double[]> evidence, double[] believed)
    {
        var total = believed.Sum();
        var odds = Array.ConvertAll(believed, b => b / total);
        for (var round = 0; round < Rounds; round++)
        {
            double[] sums = [.. believed];
            foreach (var chain in evidence) Share(chain, odds, sums);
            odds = Array.ConvertAll(sums, s => s / (evidence.Count + total));
        }

        var sum = evidence.Sum(chain => Share(chain, odds, null));
        for (var k = 0; k < odds.Length; k++) sum += believed[k] * Math.Log(odds[k]);
        return (odds, sum);
    }

    /// <summary>ln of the probability of one chain's readings over all clocks.</summary>
    public static double LogEvidence(double[] evidence, double[] odds) => Share(evidence, odds, null);

    /// <summary>Adds a chain's shares among the clocks; gives ln of its evidence over all of them.</summary>
    private static double Share(double[] logEvidence, double[] odds, double[]? sums)
    {
        var best = logEvidence.Max();
        var total = 0.0;
        for (var k = 0; k < odds.Length; k++) total += odds[k] * Math.Exp(logEvidence[k] - best);
        for (var k = 0; k < sums?.Length; k++) sums[k] += odds[k] * Math.Exp(logEvidence[k] - best) / total;
        return best + Math.Log(total);
    }
}
