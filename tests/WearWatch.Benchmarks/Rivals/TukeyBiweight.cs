using WearWatch.Trends;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>A line by Tukey's biweight; Fieller's interval from the readings that it did not call outliers.</summary>
internal static class TukeyBiweight
{
    public static RivalAnswer Ask(double[] hours, double[] percents, double limitPercent)
    {
        if (TukeyLine.Fit(hours, percents) is not TrendFit<TukeyLine>.Fitted { Trend: var robust }) return RivalAnswer.None;
        int[] kept = [.. Enumerable.Range(0, hours.Length).Where(i => !robust.IsOutlier(i))];
        var middle = robust.Slope > 0 ? (limitPercent - robust.Intercept) / robust.Slope : (double?)null;
        var interval = LeastSquares.Ask([.. kept.Select(i => hours[i])], [.. kept.Select(i => percents[i])], limitPercent);
        return interval with { Middle = middle };
    }
}
