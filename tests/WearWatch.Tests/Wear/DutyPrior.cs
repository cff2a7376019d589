using MathNet.Numerics.LinearAlgebra;
using WearWatch.Chains;
using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>
/// A prior from a fleet by plain weighted ridge regression of ln(rate) on the duty, docs/method.md: the fleet model of
/// WearWatch.Learning in small, so that the tests of the domain need no learning.
/// </summary>
internal sealed class DutyPrior
{
    private readonly Vector<double> effects;
    private readonly double variance, start, startDeviation;

    private DutyPrior(IReadOnlyList<(double[] Duty, double LogRate, double Error, double Start)> samples)
    {
        var x = Matrix<double>.Build.DenseOfRowArrays(samples.Select(s => s.Duty));
        var y = Vector<double>.Build.DenseOfEnumerable(samples.Select(s => s.LogRate));
        var tau2 = 0.2;
        for (var round = 0; ; round++)
        {
            var weights = Vector<double>.Build.DenseOfEnumerable(samples.Select(s => 1 / (s.Error * s.Error + tau2)));
            var weighted = x.Transpose() * Matrix<double>.Build.DenseOfDiagonalVector(weights);
            var ridge = Matrix<double>.Build.Diagonal(x.ColumnCount, x.ColumnCount, i => i == 0 ? 0 : 0.5);
            effects = (weighted * x + ridge).Solve(weighted * y);
            if (round == 20) break;
            var residuals = (y - x * effects).ToArray();
            var mad = Median.Deviation(residuals);
            tau2 = Math.Max((mad * mad + residuals.Average(r => r * r)) / 2 - samples.Average(s => s.Error * s.Error), 0.03);
        }

        variance = tau2 * (1 + (double)x.ColumnCount / samples.Count);
        double[] starts = [.. samples.Select(s => s.Start)];
        (start, startDeviation) = (Median.Of(starts), Math.Max(Median.Deviation(starts), 0.05));
    }

    public static DutyPrior Learn(IEnumerable<(ChainCard Card, IReadOnlyList<Observation> Observations)> chains) =>
        new([.. chains.Select(c => Sample(c.Card, c.Observations)).OfType<(double[], double, double, double)>()]);

    public WearPrior For(ChainCard card) => new(
        effects.DotProduct(Vector<double>.Build.Dense(Design(card.Duty))), variance, start, startDeviation,
        $"ridge regression of the tests");

    private static double[] Design(Duty duty) =>
    [
        1, Math.Log(duty.RelativeLoad!.Value / 0.5), Math.Log(duty.SpeedMetresPerSecond!.Value),
        .. new[] { LubricationState.Auto, LubricationState.Poor, LubricationState.Dry }
            .Select(l => duty.Lubrication == l ? 1.0 : 0),
        .. new[] { DustLevel.Moderate, DustLevel.Heavy }.Select(d => duty.Dust == d ? 1.0 : 0),
    ];

    private static (double[] Duty, double LogRate, double Error, double Start)? Sample(
        ChainCard card, IReadOnlyList<Observation> observations)
    {
        Observation[] straight = [.. observations.Where(o => o is { HoursSinceFitting: >= 100, ElongationPercent: <= 2 })];
        if (straight.Length < 3) return null;
        double[] hours = [.. straight.Select(o => o.HoursSinceFitting / 1000)];
        double[] percents = [.. straight.Select(o => o.ElongationPercent)];
        if (TukeyLine.Fit(hours, percents,
            straight[0].ScatterPercent) is not TrendFit<TukeyLine>.Fitted { Trend: { Slope: > 0 } line }) return null;
        var error = 1.3 * line.Scale / (line.Slope * Math.Sqrt(line.Line.SumSquaresX));
        return error > 0.5 ? null : (Design(card.Duty), Math.Log(line.Slope), error, line.Intercept);
    }
}
