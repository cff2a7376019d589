using MathNet.Numerics.Distributions;
using WearWatch.Trends;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>A line by the median of all slopes; its interval from the ranks of the slopes by Kendall's variance.</summary>
/// <remarks>
/// The slopes at ranks <c>(M -+ z sqrt(n (n-1) (2n+5) / 18)) / 2</c> bound the slope; the line through the medians turns with it.
/// Source: P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379 (from memory).
/// </remarks>
internal static class TheilSen
{
    public static RivalAnswer Ask(double[] hours, double[] percents, double limitPercent)
    {
        if (TheilSenLine.Fit(hours, percents) is not TrendFit<TheilSenLine>.Fitted { Trend: { Slope: > 0 } line })
            return RivalAnswer.None;
        var slopes = TheilSenLine.Slopes(hours, percents);
        double n = hours.Length;
        var half = Normal.InvCDF(0, 1, 0.5 + 0.5 * RivalAnswer.Confidence) * Math.Sqrt(n * (n - 1) * (2 * n + 5) / 18);
        int low = (int)Math.Floor((slopes.Length - half) / 2), high = (int)Math.Ceiling((slopes.Length + half) / 2) - 1;
        var (middleHours, middlePercent) = (Median.Of(hours), Median.Of(percents));
        return low < 0 || high >= slopes.Length
            ? new(null, Crossing(line.Slope, line.Intercept), null)
            : new(Turned(slopes[high]), Crossing(line.Slope, line.Intercept), Turned(slopes[low]));

        double Crossing(double slope, double intercept) => (limitPercent - intercept) / slope;

        double Turned(double slope) => slope > 0 ? middleHours + (limitPercent - middlePercent) / slope : double.PositiveInfinity;
    }
}
