namespace WearWatch.Wear;

/// <summary>Finds a plant's own constants of wear from the chains that have run out there.</summary>
/// <remarks>
/// Every set of constants gives every chain an evidence on every onset of acceleration, <c>LE[i, k]</c>. The odds of the onsets
/// come from them by expectation and maximisation, <c>w_k = (sum_i softmax_k(LE_i + ln w) + 1) / (n + K)</c>, and the constants
/// by a search along one coordinate after another for the largest <c>sum_i ln sum_k w_k exp(LE[i, k])</c>. The result depends on
/// nothing but the chains and their order. docs/method.md.
/// </remarks>
public static class SelfCalibration
{
    /// <summary>With fewer chains the defaults are the better guess.</summary>
    public const int FewestChains = 30;

    private const int WeightRounds = 60;
    private const int MostSweeps = 3;

    private static readonly double?[] Onsets = [1.5, 1.75, 2.0, 2.25, 2.5, 2.75, 3.0, 3.25, null];

    private static readonly Func<WearConstants, IEnumerable<WearConstants>>[] Coordinates =
    [
        c => Grid(0.8, 1.2, 1.6).Select(v => c with { Acceleration = v }),
        c => Grid(0.002, 0.004, 0.008, 0.016, 0.032).Select(v => c with { RateDrift = v }),
        c => Grid(0.005, 0.01, 0.02).Select(v => c with { PlaceScatter = v }),
        c => Grid(0.02, 0.035, 0.06).Select(v => c with { JumpsPer1000Hours = v }),
        c => Grid(0.05, 0.1, 0.2).Select(v => c with { RunInPercent = v, RunInDeviationPercent = 0.4 * v }),
    ];

    /// <summary>Calibrates on completed chains.</summary>
    /// <param name="chains">Chains that have run out, each with the prior it had.</param>
    /// <param name="start">Where the search begins: the constants in use.</param>
    public static CalibrationOutcome Of(IReadOnlyList<CompletedChain> chains, WearConstants start)
    {
        if (chains.Count < FewestChains) return new CalibrationOutcome.TooFewChains(chains.Count, FewestChains);

        var first = Weighed(chains, start);
        var best = first;
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            var before = best.LogEvidence;
            foreach (var along in Coordinates)
            {
                foreach (var constants in along(best.Constants))
                {
                    if (SameButOnsets(constants, best.Constants)) continue;
                    var tried = Weighed(chains, constants);
                    if (tried.LogEvidence > best.LogEvidence) best = tried;
                }
            }

            if (best.LogEvidence <= before) break;
        }

        return new CalibrationOutcome.Calibrated(best.Constants, chains.Count, best.LogEvidence - first.LogEvidence);
    }

    private static double[] Grid(params double[] values) => values;

    private static bool SameButOnsets(WearConstants one, WearConstants other) => one with { Onsets = other.Onsets } == other;

    /// <summary>The constants with the odds of the onsets that the chains give them, and the evidence for all that.</summary>
    private static (WearConstants Constants, double LogEvidence) Weighed(
        IReadOnlyList<CompletedChain> chains, WearConstants constants)
    {
        var filter = new WearFilter(constants with { Onsets = [.. Onsets.Select(o => new OnsetNode(o, 1.0 / Onsets.Length))] });
        var evidence = new double[chains.Count][];
        Parallel.For(0, chains.Count, i => evidence[i] = filter.LogEvidence(filter.Follow(chains[i].Chain, chains[i].Prior)));

        var weights = Enumerable.Repeat(1.0 / Onsets.Length, Onsets.Length).ToArray();
        for (var round = 0; round < WeightRounds; round++)
        {
            var sums = Enumerable.Repeat(1.0, weights.Length).ToArray();
            foreach (var chain in evidence) Share(chain, weights, sums);
            weights = Array.ConvertAll(sums, s => s / (chains.Count + weights.Length));
        }

        return (
            constants with { Onsets = [.. Onsets.Zip(weights, (o, w) => new OnsetNode(o, w))] },
            evidence.Sum(chain => Share(chain, weights, null)));
    }

    /// <summary>Adds a chain's shares among the onsets; gives ln of its evidence over all of them.</summary>
    private static double Share(double[] logEvidence, double[] weights, double[]? sums)
    {
        var best = logEvidence.Max();
        var total = 0.0;
        for (var k = 0; k < weights.Length; k++) total += weights[k] * Math.Exp(logEvidence[k] - best);
        for (var k = 0; k < sums?.Length; k++) sums[k] += weights[k] * Math.Exp(logEvidence[k] - best) / total;
        return best + Math.Log(total);
    }
}
