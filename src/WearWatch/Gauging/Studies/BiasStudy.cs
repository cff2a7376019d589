using MathNet.Numerics.Distributions;
using WearWatch.Phrases;
using WearWatch.Trends;

namespace WearWatch.Gauging.Studies;

/// <summary>How far a tool is off on the average, and whether that depends on the length.</summary>
/// <param name="Bias">Mean of measured less known, in the unit of the readings.</param>
/// <param name="BiasUncertainty">Standard error of the bias, in the unit of the readings.</param>
/// <param name="BiasP">Probability of such a bias by chance.</param>
/// <param name="Linearity">
/// The line of measured less known over known; null when only one length, or too little, was measured.
/// </param>
/// <param name="SlopeP">Probability of such a slope by chance; null as above.</param>
public sealed record BiasStudy(double Bias, double BiasUncertainty, double BiasP, StraightLine? Linearity, double? SlopeP)
{
    /// <summary>Rarer than this is not taken for chance.</summary>
    public const double Chance = 0.05;

    /// <summary>Works out a study; null with fewer than two readings.</summary>
    /// <remarks>
    /// Bias by a t-test of the differences, linearity by a straight line through them. Source: docs/references.md [47].
    /// </remarks>
    public static BiasStudy? Of(IReadOnlyList<KnownReading> readings)
    {
        if (readings.Count < 2) return null;
        double[] known = [.. readings.Select(r => r.Known)];
        double[] off = [.. readings.Select(r => r.Measured - r.Known)];
        var bias = off.Average();
        var standardError = Math.Sqrt(off.Sum(d => (d - bias) * (d - bias)) / (off.Length - 1) / off.Length);

        var line = readings.Count > 2 && StraightLine.Fit(known, off) is TrendFit<StraightLine>.Fitted fitted
            ? fitted.Trend
            : null;
        return new BiasStudy(
            bias, standardError, ByChance(bias, standardError, off.Length - 1), line,
            line is null ? null : ByChance(line.Slope, line.SlopeStandardError, line.DegreesOfFreedom));
    }

    /// <summary>What to do, in plain words.</summary>
    public Phrase Advice => (BiasP < Chance, SlopeP < Chance) switch
    {
        (_, true) => $"The error grows or shrinks with the length: have the tool calibrated, or replace it.",
        (true, _) => Bias > 0
            ? Phrase.Of($"The tool reads {Bias:0.###} too long throughout: check its zero and its hook, then measure again.")
            : $"The tool reads {-Bias:0.###} too short throughout: check its zero and its hook, then measure again.",
        _ => $"No bias that these readings could show.",
    };

    private static double ByChance(double estimate, double standardError, int degreesOfFreedom) => standardError > 0
        ? 2 * StudentT.CDF(0, 1, degreesOfFreedom, -Math.Abs(estimate / standardError))
        : estimate == 0 ? 1 : 0;
}
