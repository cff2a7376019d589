namespace WearWatch.Trends;

/// <summary>Least squares on several predictors and a constant, to nearly all digits of double.</summary>
/// <remarks>
/// <c>min sum w (y - b0 - b1 x1 - ...)^2</c> by Householder QR on columns scaled by powers of two (which rounds nothing), then refined: the
/// residuals of the normal system <c>[I A; A' 0][r; b] = [y; 0]</c> are taken in twice the precision and solved for corrections
/// until these no longer shrink (A. Bjorck, BIT 7 (1967) 257, from memory). Covariance <c>s^2 (A'A)^-1</c>.
/// Checked against docs/references.md [14].
/// </remarks>
public sealed record LinearRegression
{
    private const int MostRefinements = 10;

    /// <summary>The constant, then a coefficient for each predictor, in units of y for each unit of it.</summary>
    public required IReadOnlyList<double> Coefficients { get; init; }

    /// <summary>Covariance of the coefficients, row by row.</summary>
    public required IReadOnlyList<double> Covariance { get; init; }

    /// <summary>Weighted residual sum of squares over <see cref="DegreesOfFreedom"/>, its root taken; NaN when nothing is left over.</summary>
    public required double ResidualStandardDeviation { get; init; }

    /// <summary>Number of points with a weight above zero, less the number of coefficients.</summary>
    public required int DegreesOfFreedom { get; init; }

    /// <summary>Share of the variation about the mean that is explained; NaN when y does not vary.</summary>
    public required double RSquared { get; init; }

    /// <summary>Standard error of a coefficient.</summary>
    /// <param name="coefficient">Which one; 0 is the constant.</param>
    public double StandardError(int coefficient) => Math.Sqrt(Covariance[coefficient * Coefficients.Count + coefficient]);

    /// <summary>Fits a polynomial: the predictors are the powers of x.</summary>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates, as many.</param>
    /// <param name="degree">Highest power, at least 1.</param>
    /// <param name="weights">Weights, not negative; none means that all weigh the same.</param>
    public static TrendFit<LinearRegression> FitPolynomial(
        ReadOnlySpan<double> x, ReadOnlySpan<double> y, int degree, ReadOnlySpan<double> weights = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degree, 1);
        var powers = new double[degree][];
        for (var k = 0; k < degree; k++)
        {
            powers[k] = new double[x.Length];
            for (var i = 0; i < x.Length; i++) powers[k][i] = k == 0 ? x[i] : powers[k - 1][i] * x[i];
        }

        return Fit(powers, y, weights);
    }

    /// <summary>Fits the regression.</summary>
    /// <param name="predictors">A column of values for each predictor; the constant is added.</param>
    /// <param name="y">What they are to explain.</param>
    /// <param name="weights">Weights, not negative; none means that all weigh the same.</param>
    public static TrendFit<LinearRegression> Fit(
        IReadOnlyList<double[]> predictors, ReadOnlySpan<double> y, ReadOnlySpan<double> weights = default)
    {
        var points = y.Length;
        if (predictors.Any(p => p.Length != points) || (weights.Length != 0 && weights.Length != points))
            throw new ArgumentException("Every point needs a value of each predictor, a y and, where weights are given, a weight.", nameof(y));

        var roots = Roots(weights, points);
        var used = roots.Count(root => root > 0);
        var coefficients = predictors.Count + 1;
        if (used < coefficients)
            return new TrendFit<LinearRegression>.Undetermined(FormattableString.Invariant($"{coefficients} coefficients need as many points."));

        var right = new double[points];
        for (var i = 0; i < points; i++) right[i] = roots[i] * y[i];
        var system = new RefinedLeastSquares([roots, .. predictors.Select(p => p.Zip(roots, (value, root) => value * root).ToArray())]);
        if (!system.IsDetermined)
            return new TrendFit<LinearRegression>.Undetermined("The points do not tell the predictors apart: one is a combination of others.");

        var (solution, residuals) = system.Solve(right, MostRefinements);
        var freedom = used - coefficients;
        var residualSquares = SumOfSquares(residuals);
        var variance = freedom > 0 ? residualSquares / freedom : double.NaN;
        var total = SquaresAboutMean(roots, y);
        return new TrendFit<LinearRegression>.Fitted(new LinearRegression
        {
            Coefficients = solution,
            Covariance = [.. system.InverseOfSquare().Select(entry => entry * variance)],
            ResidualStandardDeviation = Math.Sqrt(variance),
            DegreesOfFreedom = freedom,
            RSquared = total > 0 ? 1 - residualSquares / total : double.NaN,
        });
    }

    /// <summary>Square roots of the weights: rows multiplied by them make the weighted problem an unweighted one.</summary>
    private static double[] Roots(ReadOnlySpan<double> weights, int points)
    {
        var roots = new double[points];
        for (var i = 0; i < points; i++)
        {
            roots[i] = weights.IsEmpty ? 1 : Math.Sqrt(weights[i]);
            if (!(roots[i] >= 0)) throw new ArgumentOutOfRangeException(nameof(weights), weights[i], "A weight is not negative.");
        }

        return roots;
    }

    private static double SumOfSquares(ReadOnlySpan<double> values)
    {
        var sum = default(CompensatedSum);
        foreach (var value in values) sum.Add(value, value);
        return sum.Value;
    }

    private static double SquaresAboutMean(ReadOnlySpan<double> roots, ReadOnlySpan<double> y)
    {
        double sumWeights = 0, mean = 0, squares = 0;
        for (var i = 0; i < y.Length; i++)
        {
            sumWeights += roots[i] * roots[i];
            mean += roots[i] * roots[i] * y[i];
        }

        mean /= sumWeights;
        for (var i = 0; i < y.Length; i++) squares += roots[i] * roots[i] * (y[i] - mean) * (y[i] - mean);
        return squares;
    }
}
