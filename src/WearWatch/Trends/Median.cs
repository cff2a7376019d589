namespace WearWatch.Trends;

/// <summary>The middle of some values, and the spread about it.</summary>
public static class Median
{
    /// <summary>
    /// What makes the median absolute deviation of a normal distribution its standard deviation: 1 / Phi^-1(3/4).
    /// </summary>
    public const double ToStandardDeviation = 1.4826022185056018;

    /// <summary>Median of values in any order; the mean of the middle two when their number is even.</summary>
    public static double Of(ReadOnlySpan<double> values)
    {
        var sorted = values.ToArray();
        Array.Sort(sorted);
        return OfSorted(sorted);
    }

    /// <summary>Median of values in ascending order.</summary>
    public static double OfSorted(ReadOnlySpan<double> sorted) => sorted.Length == 0
        ? throw new ArgumentException("No values have no median.", nameof(sorted))
        : 0.5 * (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]);

    /// <summary>
    /// Standard deviation about the median that half of the values may leave without moving it far: 1.4826 times the median
    /// absolute deviation.
    /// </summary>
    public static double Deviation(ReadOnlySpan<double> values) => DeviationAbout(Of(values), values);

    /// <summary>
    /// Standard deviation about a given centre, such as zero for residuals: 1.4826 times the median distance from it.
    /// </summary>
    public static double DeviationAbout(double center, ReadOnlySpan<double> values)
    {
        var distances = new double[values.Length];
        for (var i = 0; i < values.Length; i++) distances[i] = Math.Abs(values[i] - center);
        return ToStandardDeviation * Of(distances);
    }
}
