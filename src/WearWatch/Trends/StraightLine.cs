namespace WearWatch.Trends;

/// <summary>A straight line through points by weighted least squares, kept as the sums that determine it.</summary>
/// <remarks>
/// <c>y = ybar + b (x - xbar)</c>, <c>b = Sxy / Sxx</c>; xbar, ybar weighted means, Sxx, Sxy weighted sums about them. Sums about
/// the means lose about two digits where sums of squares would lose all of them: hours are large and their differences small.
/// Weights are relative: doubling all of them changes no estimate and no standard error.
/// Source: docs/references.md [14] for the values that it is checked against.
/// </remarks>
public sealed record StraightLine
{
    /// <summary>Weighted mean of the abscissae, in their unit.</summary>
    public required double MeanX { get; init; }

    /// <summary>Weighted mean of the ordinates, in their unit.</summary>
    public required double MeanY { get; init; }

    /// <summary>Slope, in units of y for each unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>Weighted sum of squares of the abscissae about their mean; above zero.</summary>
    public required double SumSquaresX { get; init; }

    /// <summary>Sum of the weights; the number of points where none were given.</summary>
    public required double SumWeights { get; init; }

    /// <summary>
    /// Weighted residual sum of squares over <see cref="DegreesOfFreedom"/>; NaN with two points, which leave no residual.
    /// </summary>
    public required double ResidualVariance { get; init; }

    /// <summary>Number of points with a weight above zero, less two.</summary>
    public required int DegreesOfFreedom { get; init; }

    /// <summary>Share of the variation about the mean that the line explains, 0 to 1; NaN when y does not vary.</summary>
    public required double RSquared { get; init; }

    /// <summary>Value of the line at zero.</summary>
    public double Intercept => MeanY - Slope * MeanX;

    /// <summary>Residual standard deviation of a point of weight one.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualVariance);

    /// <summary>Standard error of the slope.</summary>
    public double SlopeStandardError => Math.Sqrt(ResidualVariance / SumSquaresX);

    /// <summary>Standard error of the intercept.</summary>
    public double InterceptStandardError => StandardErrorAt(0);

    /// <summary>Value of the line at x.</summary>
    public double At(double x) => MeanY + Slope * (x - MeanX);

    /// <summary>
    /// Standard error of the line (the mean response, not of a further point) at x: <c>s sqrt(1/W + (x - xbar)^2 / Sxx)</c>.
    /// </summary>
    public double StandardErrorAt(double x) =>
        Math.Sqrt(ResidualVariance * (1 / SumWeights + (x - MeanX) * (x - MeanX) / SumSquaresX));

    /// <summary>Fits the line.</summary>
    /// <param name="x">Abscissae, such as running hours.</param>
    /// <param name="y">Ordinates, such as elongations; as many.</param>
    /// <param name="weights">Weights, not negative, as many; none means that all weigh the same.</param>
    public static TrendFit<StraightLine> Fit(
        ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> weights = default)
    {
        if (y.Length != x.Length || (weights.Length != 0 && weights.Length != x.Length))
            throw new ArgumentException("Every point needs an x, a y and, where weights are given, a weight.", nameof(y));

        var (points, sumWeights, meanX, meanY) = Means(x, y, weights);
        if (points < 2) return new TrendFit<StraightLine>.Undetermined($"A line needs two points.");

        double sxx = 0, sxy = 0, syy = 0;
        for (var i = 0; i < x.Length; i++)
        {
            var w = Weight(weights, i);
            var (dx, dy) = (x[i] - meanX, y[i] - meanY);
            sxx += w * dx * dx;
            sxy += w * dx * dy;
            syy += w * dy * dy;
        }

        if (!(sxx > 0))
            return new TrendFit<StraightLine>.Undetermined($"All points stand at the same place; a line needs two places.");
        var slope = sxy / sxx;

        // The residuals are summed one by one: Syy - b Sxy would cancel to nothing on a good line.
        double residualSumSquares = 0;
        for (var i = 0; i < x.Length; i++)
        {
            var residual = y[i] - meanY - slope * (x[i] - meanX);
            residualSumSquares += Weight(weights, i) * residual * residual;
        }

        return new TrendFit<StraightLine>.Fitted(new StraightLine
        {
            MeanX = meanX,
            MeanY = meanY,
            Slope = slope,
            SumSquaresX = sxx,
            SumWeights = sumWeights,
            DegreesOfFreedom = points - 2,
            ResidualVariance = points > 2 ? residualSumSquares / (points - 2) : double.NaN,
            RSquared = syy > 0 ? 1 - residualSumSquares / syy : double.NaN,
        });
    }

    private static (int Points, double SumWeights, double MeanX, double MeanY) Means(
        ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> weights)
    {
        double sumWeights = 0, sumX = 0, sumY = 0;
        var points = 0;
        for (var i = 0; i < x.Length; i++)
        {
            var w = Weight(weights, i);
            if (!(w >= 0)) throw new ArgumentOutOfRangeException(nameof(weights), w, "A weight is not negative.");
            if (w == 0) continue;
            points++;
            sumWeights += w;
            sumX += w * x[i];
            sumY += w * y[i];
        }

        return (points, sumWeights, sumX / sumWeights, sumY / sumWeights);
    }

    private static double Weight(ReadOnlySpan<double> weights, int point) => weights.IsEmpty ? 1 : weights[point];
}
