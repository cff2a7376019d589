using MathNet.Numerics.Distributions;
using WearWatch.Trends;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>
/// Where a fitted line reaches a level, with the confidence interval of that place (Fieller), which may have no end.
/// </summary>
/// <remarks>
/// All x with <c>(y0 - ybar - b d)^2 &lt;= t^2 s^2 (k + 1/W + d^2/Sxx)</c>, d = x - xbar; k = 0 for the line itself reaching y0
/// (a limit), 1/m for the mean of m further observations. With <c>g = t^2 s^2 / (b^2 Sxx) &gt;= 1</c> the slope may be zero, and
/// the set has no upper end: that is an answer, and a symmetric interval in its place would be wrong. It covers what the points
/// left open about this line, not whether wear goes on in a straight line. Source: docs/references.md [17].
/// </remarks>
/// <param name="Estimate">Where the line reaches the level; infinite when it has no slope.</param>
/// <param name="G">Fieller's g: the share of the slope's square that is its uncertainty; 1 and above means unbounded.</param>
/// <param name="StandardError">Standard error of the estimate by the delta method; misleading when g is not small.</param>
public abstract record InversePrediction(double Estimate, double G, double StandardError)
{
    /// <summary>The interval has two ends.</summary>
    /// <param name="Estimate">Where the line reaches the level.</param>
    /// <param name="G">Fieller's g, below 1.</param>
    /// <param name="StandardError">Standard error by the delta method.</param>
    /// <param name="Lower">Lower end.</param>
    /// <param name="Upper">Upper end.</param>
    public sealed record Between(double Estimate, double G, double StandardError, double Lower, double Upper)
        : InversePrediction(Estimate, G, StandardError);

    /// <summary>No upper limit: a line that never reaches the level is among those that the points allow.</summary>
    /// <param name="Estimate">Where the fitted line reaches the level.</param>
    /// <param name="G">Fieller's g, at least 1.</param>
    /// <param name="StandardError">Standard error by the delta method, for what it is worth.</param>
    /// <param name="Lower">What it lies beyond if it lies on the far side of the points; null when nothing is excluded.</param>
    public sealed record NoUpperLimit(double Estimate, double G, double StandardError, double? Lower)
        : InversePrediction(Estimate, G, StandardError);

    /// <summary>Predicts where a line reaches a level.</summary>
    /// <param name="line">The line, from at least three points.</param>
    /// <param name="level">The y to reach.</param>
    /// <param name="confidence">Confidence of the interval, above 0 and below 1.</param>
    /// <param name="furtherObservations">
    /// Zero for the crossing of a fixed level; m when the level itself is the mean of m further observations.
    /// </param>
    public static InversePrediction Of(StraightLine line, double level, double confidence, int furtherObservations = 0)
    {
        if (line.DegreesOfFreedom < 1) throw new ArgumentException("Two points leave no residual to judge by.", nameof(line));
        ArgumentOutOfRangeException.ThrowIfNegative(furtherObservations);

        var t = StudentT.InvCDF(0, 1, line.DegreesOfFreedom, 0.5 + 0.5 * confidence);
        var k = furtherObservations == 0 ? 0 : 1.0 / furtherObservations;
        var own = k + 1 / line.SumWeights;
        var b = line.Slope;
        var rise = level - line.MeanY;
        var g = t * t * line.ResidualVariance / (b * b * line.SumSquaresX);
        var d = rise / b;
        var standardError = Math.Sqrt(line.ResidualVariance * (own + d * d / line.SumSquaresX)) / Math.Abs(b);

        // The quadratic a d^2 - 2 h d + c <= 0, divided by nothing, so that it stays good for g near 1 and for b = 0.
        var a = b * b - t * t * line.ResidualVariance / line.SumSquaresX;
        var h = b * rise;
        var c = rise * rise - t * t * line.ResidualVariance * own;
        var discriminant = h * h - a * c;
        if (g < 1)
        {
            var root = Math.Sqrt(Math.Max(discriminant, 0));
            return new Between(line.MeanX + d, g, standardError, line.MeanX + (h - root) / a, line.MeanX + (h + root) / a);
        }

        // Here a
        // <= 0: everything but a gap around the points, or everything. The far edge of the gap is where a crossing may start.
        double? lower = discriminant > 0 && a < 0 && c > 0 ? line.MeanX + (h - Math.Sqrt(discriminant)) / a : null;
        return new NoUpperLimit(line.MeanX + d, g, standardError, lower);
    }
}
