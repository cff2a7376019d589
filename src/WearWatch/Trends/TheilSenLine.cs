namespace WearWatch.Trends;

/// <summary>
/// The line of the median slope between pairs of points: up to 29 % of the points may be wrong without carrying it off.
/// </summary>
/// <remarks>
/// <c>b = median (yj - yi) / (xj - xi)</c> over the pairs with different x, <c>a = median (yi - b xi)</c>. Pairs at the same x
/// have no slope and are left out. Source: P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379 (from memory).
/// </remarks>
/// <param name="Intercept">Value at zero.</param>
/// <param name="Slope">The median slope.</param>
/// <param name="Pairs">How many pairs of points had a slope.</param>
public sealed record TheilSenLine(double Intercept, double Slope, int Pairs)
{
    /// <summary>Value of the line at x.</summary>
    public double At(double x) => Intercept + Slope * x;

    /// <summary>Fits the line; its cost grows with the square of the number of points.</summary>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates, as many.</param>
    public static TrendFit<TheilSenLine> Fit(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (y.Length != x.Length) throw new ArgumentException("Every point needs an x and a y.", nameof(y));
        var slopes = Slopes(x, y);
        if (slopes.Length == 0) return new TrendFit<TheilSenLine>.Undetermined($"A line needs points at two places.");

        var slope = Median.OfSorted(slopes);
        var offsets = new double[x.Length];
        for (var i = 0; i < x.Length; i++) offsets[i] = y[i] - slope * x[i];
        return new TrendFit<TheilSenLine>.Fitted(new TheilSenLine(Median.Of(offsets), slope, slopes.Length));
    }

    /// <summary>The slopes of all pairs of points at different x, in ascending order.</summary>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates, as many.</param>
    public static double[] Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var slopes = new double[x.Length * (x.Length - 1) / 2];
        var found = 0;
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = i + 1; j < x.Length; j++)
            {
                if (x[i] != x[j]) slopes[found++] = (y[j] - y[i]) / (x[j] - x[i]);
            }
        }

        Array.Resize(ref slopes, found);
        Array.Sort(slopes);
        return slopes;
    }
}
