namespace WearWatch.Trends;

/// <summary>A straight line that gross errors do not move: Tukey's biweight, started from the Theil-Sen line.</summary>
/// <remarks>
/// Iterated least squares with weights <c>w = (1 - (r / c s)^2)^2</c>, zero beyond c s; r residual, s = 1.4826 times the median
/// absolute residual, c = 4.685 (95 % efficiency on normal errors). The biweight has several solutions; the start from a line
/// that outliers do not carry off decides for the right one. Source: A. E. Beaton, J. W. Tukey, Technometrics 16 (1974) 147 (from
/// memory).
/// </remarks>
public sealed record TukeyLine
{
    /// <summary>Tuning constant of the biweight.</summary>
    public const double TuningConstant = 4.685;

    /// <summary>A point of less weight than this is an outlier.</summary>
    public const double OutlierWeight = 0.05;

    private const int MostRounds = 200;

    /// <summary>The weighted line of the last round.</summary>
    public required StraightLine Line { get; init; }

    /// <summary>Robust standard deviation of the points about the line; not below the floor that was given.</summary>
    public required double Scale { get; init; }

    /// <summary>Weight of each point, 0 to 1, in the order given.</summary>
    public required IReadOnlyList<double> Weights { get; init; }

    /// <summary>Value at zero.</summary>
    public double Intercept => Line.Intercept;

    /// <summary>Slope, in units of y for each unit of x.</summary>
    public double Slope => Line.Slope;

    /// <summary>Whether a point is an outlier.</summary>
    /// <param name="point">Which point, from 0 in the order given.</param>
    public bool IsOutlier(int point) => Weights[point] < OutlierWeight;

    /// <summary>Fits the line.</summary>
    /// <param name="x">Abscissae, such as running hours.</param>
    /// <param name="y">Ordinates, as many.</param>
    /// <param name="scaleFloor">
    /// The scatter that is known anyhow, such as the tool's: few points that happen to lie on a line must not make every other
    /// one an outlier. Zero when nothing is known.
    /// </param>
    public static TrendFit<TukeyLine> Fit(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double scaleFloor = 0)
    {
        if (TheilSenLine.Fit(x, y) is not TrendFit<TheilSenLine>.Fitted { Trend: var start })
            return new TrendFit<TukeyLine>.Undetermined($"A line needs points at two places.");

        var residuals = new double[x.Length];
        var weights = new double[x.Length];
        for (var i = 0; i < x.Length; i++) residuals[i] = y[i] - start.At(x[i]);
        var scale = Weigh(residuals, weights, scaleFloor);
        for (var round = 0; ; round++)
        {
            if (StraightLine.Fit(x, y, weights) is not TrendFit<StraightLine>.Fitted { Trend: var line })
                return new TrendFit<TukeyLine>.Undetermined($"The points that agree with each other stand at one place.");

            var moved = 0.0;
            for (var i = 0; i < x.Length; i++)
            {
                var residual = y[i] - line.At(x[i]);
                moved = Math.Max(moved, Math.Abs(residual - residuals[i]));
                residuals[i] = residual;
            }

            if (moved <= 1e-10 * scale || round == MostRounds)
                return new TrendFit<TukeyLine>.Fitted(new TukeyLine { Line = line, Scale = scale, Weights = weights });
            scale = Weigh(residuals, weights, scaleFloor);
        }
    }

    private static double Weigh(ReadOnlySpan<double> residuals, Span<double> weights, double scaleFloor)
    {
        var scale = Math.Max(Median.DeviationAbout(0, residuals), scaleFloor);
        for (var i = 0; i < residuals.Length; i++)
        {
            // With no scatter at all, at least half of the points lie on the line and the rest is wrong.
            var u = scale > 0 ? residuals[i] / (TuningConstant * scale) : residuals[i] == 0 ? 0 : 1;
            weights[i] = Math.Abs(u) < 1 ? (1 - u * u) * (1 - u * u) : 0;
        }

        return scale;
    }
}
