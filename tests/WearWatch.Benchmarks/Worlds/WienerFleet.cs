using MathNet.Numerics.Distributions;
using WearWatch.Benchmarks.Rivals;
using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Worlds;

/// <summary>
/// The rival of the degradation literature: a Wiener process with a drift of its own for each chain, by empirical Bayes.
/// </summary>
/// <remarks>
/// <c>wear = start + drift t + sigma W(t)</c>, start and drift normal over the fleet, readings with their known scatter; a Kalman
/// filter for each chain, the fleet's figures by moments and, for sigma and the spread of drifts, by the largest likelihood. The
/// hours left are where the marginal normal law passes the limit (the reflected part of the inverse Gaussian law is left out: it
/// is small where wear seldom falls). Whitmore, Lifetime Data Analysis 1 (1995) 307 (from memory).
/// </remarks>
internal sealed class WienerFleet
{
    private const double RunInOverHours = 100;
    private const double LongestThousandHours = 1000;

    private readonly double start, startVariance, drift, driftVariance, noise;

    /// <summary>Learns from chains of which all readings are known.</summary>
    public WienerFleet(IEnumerable<IReadOnlyList<Observation>> chains)
    {
        var known = chains.Select(Steady).Where(c => c.Count > 2).ToList();
        var lines = known.ConvertAll(c => StraightLine.Fit(
            [.. c.Select(o => o.HoursSinceFitting / 1000)], [.. c.Select(o => o.ElongationPercent)])
            is TrendFit<StraightLine>.Fitted { Trend: var line } ? (line.Intercept, line.Slope) : default);
        (start, startVariance) = Moments([.. lines.Select(l => l.Intercept)]);
        (drift, driftVariance) = Moments([.. lines.Select(l => l.Slope)]);
        noise = Enumerable.Range(0, 12).Select(i => 1e-5 * Math.Pow(3, i))
            .MaxBy(n => known.Sum(c => Follow(c, n).LogLikelihood));
    }

    /// <summary>When a chain with these readings reaches a limit, in hours since fitting.</summary>
    public RivalAnswer Ask(IReadOnlyList<Observation> observations, double limitPercent)
    {
        var state = Follow(Steady(observations), noise);
        return new(At(0.05), At(0.5), At(0.95));

        double At(double share)
        {
            double low = 0, high = LongestThousandHours;
            if (Passed(high) < share) return double.PositiveInfinity;
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                if (Passed(middle) < share) low = middle;
                else high = middle;
            }

            return 1000 * (state.Hours + high);
        }

        double Passed(double ahead) => Normal.CDF(
            0, 1, (state.Wear + ahead * state.Drift - limitPercent)
            / Math.Sqrt(state.WearVariance + 2 * ahead * state.Both + ahead * ahead * state.DriftVariance + ahead * noise));
    }

    private static List<Observation> Steady(IReadOnlyList<Observation> chain) =>
        [.. chain.Where(o => o.HoursSinceFitting >= RunInOverHours)];

    private static (double Mean, double Variance) Moments(double[] values)
    {
        var mean = values.Average();
        return (mean, Math.Max(values.Sum(v => (v - mean) * (v - mean)) / Math.Max(values.Length - 1, 1), 1e-6));
    }

    private State Follow(IReadOnlyList<Observation> chain, double noisePerThousandHours)
    {
        var s = new State(0, start, drift, startVariance, 0, driftVariance, 0);
        foreach (var o in chain)
        {
            var ahead = o.HoursSinceFitting / 1000 - s.Hours;
            var wearVariance = s.WearVariance + 2 * ahead * s.Both + ahead * ahead * s.DriftVariance
                + ahead * noisePerThousandHours;
            var both = s.Both + ahead * s.DriftVariance;
            var total = wearVariance + o.ScatterPercent * o.ScatterPercent;
            var miss = o.ElongationPercent - s.Wear - ahead * s.Drift;
            s = new State(
                o.HoursSinceFitting / 1000, s.Wear + ahead * s.Drift + wearVariance / total * miss, s.Drift + both / total * miss,
                wearVariance * (1 - wearVariance / total), both * (1 - wearVariance / total),
                s.DriftVariance - both * both / total,
                s.LogLikelihood - 0.5 * (Math.Log(total) + miss * miss / total));
        }

        return s;
    }

    private readonly record struct State(
        double Hours, double Wear, double Drift, double WearVariance, double Both, double DriftVariance, double LogLikelihood);
}
