using WearWatch.Trends;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>The rival of every spreadsheet: a line by least squares through all readings.</summary>
internal static class LeastSquares
{
    public static RivalAnswer Ask(double[] hours, double[] percents, double limitPercent) =>
        StraightLine.Fit(hours, percents) is TrendFit<StraightLine>.Fitted { Trend: var line }
            ? RivalAnswer.Of(line, limitPercent)
            : RivalAnswer.None;
}
