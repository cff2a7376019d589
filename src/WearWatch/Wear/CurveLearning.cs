using WearWatch.Trends;

namespace WearWatch.Wear;

/// <summary>Learns the curve on which a plant's chains wear evenly from how long each took for each step of elongation.</summary>
/// <remarks>
/// <para>Hours of a step are those of the chain times those of the step, in logarithms a sum, and both are found by median polish
/// (Tukey, Exploratory Data Analysis, 1977, from memory): a table with holes will do, so suspended chains count for the steps
/// that they made, and a misread or a failed oiler here and there moves nothing.</para>
/// <para>The steps are then smoothed by how many chains tell of each (Whittaker's graduation, 1923, from memory): the sum over
/// the steps of <c>n_k (theta_k - raw_k)^2</c> and of <c>8 (theta_(k+1) - theta_k)^2</c> is least. A step told by few thus leans
/// on its neighbours.</para>
/// <para>The scale is such that rates on it are those that were expected of the chains, in the middle.</para>
/// </remarks>
public static class CurveLearning
{
    /// <summary>With fewer chains there is no middle worth the name.</summary>
    public const int FewestChains = 5;

    private const int Rounds = 12;
    private const double Smoothness = 8;
    private const double LeastStartDeviation = 0.03;
    private const int ReadingsOfStart = 4;

    /// <summary>The curve of some chains; null where too few tell of it.</summary>
    public static WearCurve? Of(IReadOnlyList<StepHours> chains)
    {
        var told = chains.Where(c => c.Logs.Count(double.IsFinite) > 1).ToList();
        var steps = Enumerable.Range(0, StepHours.Steps).LastOrDefault(k => Telling(told, k) >= FewestChains, -1) + 1;
        if (told.Count < FewestChains || steps < 2) return null;

        var (ofChain, ofStep) = Polished(told, steps);
        var smooth = Smoothed(ofStep, [.. Enumerable.Range(0, steps).Select(k => (double)Telling(told, k))]);
        double[] logRates = [.. ofChain.Select(a => Math.Log(StepHours.StepPercent) - a)];
        var scale = -Median.Of([.. told.Select((c, i) => logRates[i] - c.MeanLogRate)]);
        var curve = new WearCurve(
            StepHours.FromPercent, StepHours.StepPercent, [.. smooth.Select(s => Math.Exp(s + scale))])
        { Chains = told.Count };
        double[] starts =
        [
            .. told.Select((c, i) => Median.Of([
                .. c.Steady.Take(ReadingsOfStart)
                    .Select(s => curve.FromElongation(s.Percent) - s.ThousandHours * Math.Exp(logRates[i] + scale))])),
        ];
        return curve with
        {
            Start = Median.Of(starts),
            StartDeviation = Math.Max(Median.Deviation(starts), LeastStartDeviation * curve.Slopes[0]),
        };
    }

    private static int Telling(List<StepHours> chains, int step) => chains.Count(c => double.IsFinite(c.Logs[step]));

    private static (double[] OfChain, double[] OfStep) Polished(List<StepHours> chains, int steps)
    {
        var (ofChain, ofStep) = (new double[chains.Count], new double[steps]);
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < chains.Count; i++)
                ofChain[i] = Middle(Enumerable.Range(0, steps).Select(k => chains[i].Logs[k] - ofStep[k]), ofChain[i]);
            for (var k = 0; k < steps; k++)
                ofStep[k] = Middle(chains.Select((c, i) => c.Logs[k] - ofChain[i]), ofStep[k]);
        }

        return (ofChain, ofStep);
    }

    private static double Middle(IEnumerable<double> values, double without)
    {
        double[] told = [.. values.Where(double.IsFinite)];
        return told.Length == 0 ? without : Median.Of(told);
    }

    /// <summary>Solves the three-band equations of the graduation, from the first step up and back.</summary>
    private static double[] Smoothed(double[] raw, double[] weights)
    {
        var n = raw.Length;
        var (above, right) = (new double[n], new double[n]);
        for (var k = 0; k < n; k++)
        {
            var own = weights[k] + (k > 0 ? Smoothness : 0) + (k < n - 1 ? Smoothness : 0);
            if (k > 0) own += Smoothness * above[k - 1];
            above[k] = -(k < n - 1 ? Smoothness : 0) / own;
            right[k] = (weights[k] * raw[k] + (k > 0 ? Smoothness * right[k - 1] : 0)) / own;
        }

        for (var k = n - 2; k >= 0; k--) right[k] -= above[k] * right[k + 1];
        return right;
    }
}
