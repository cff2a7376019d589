using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>Published degradation paths, asked leave-one-out when each unit will reach a level.</summary>
/// <remarks>
/// The prior of a unit comes from least-squares lines through the others, and so does the scatter. No run-in and no acceleration
/// is supposed; the drift of the rate was set once for all, not per data set.
/// </remarks>
internal sealed class DegradationPaths(IReadOnlyList<(double Time, double Value)[]> units, double level)
{
    private static readonly WearFilter Filter = new(WearConstants.Default with
    {
        RunInPercent = 0,
        RunInDeviationPercent = 0,
        Onsets = [new(null, 1)],
        RateDrift = 0.02,
    });

    private readonly StraightLine[] lines = [.. units.Select(Line)];

    /// <summary>
    /// For every unit that reaches the level: the true time, the time known so far, and early end, middle and late end as
    /// forecast then.
    /// </summary>
    public IEnumerable<(double TrueTime, double NowTime, double Early, double Middle, double Late)> AskedAt(double lifeShare) =>
        from unit in Enumerable.Range(0, units.Count)
        let crossing = CrossingOf(unit)
        where crossing is not null
        let known = units[unit].Where(p => p.Time <= lifeShare * crossing.Value).ToArray()
        let forecast = ForecastOf(unit, known)
        let last = known[^1].Time
        select (crossing.Value, lifeShare * crossing.Value,
            last + forecast.EarlyHours!.Value, last + forecast.MiddleHours!.Value,
            last + (forecast.LateHours ?? double.PositiveInfinity));

    private static StraightLine Line((double Time, double Value)[] path) =>
        ((TrendFit<StraightLine>.Fitted)StraightLine.Fit([.. path.Select(p => p.Time)], [.. path.Select(p => p.Value)])).Trend;

    /// <summary>By interpolation, or beyond the last point by the unit's own line when it is nearly there.</summary>
    private double? CrossingOf(int unit)
    {
        var path = units[unit];
        for (var i = 1; i < path.Length; i++)
        {
            if (path[i].Value >= level)
                return path[i - 1].Time
                    + (path[i].Time - path[i - 1].Time) * (level - path[i - 1].Value) / (path[i].Value - path[i - 1].Value);
        }

        var beyond = (level - lines[unit].Intercept) / lines[unit].Slope;
        return beyond < 1.5 * path[^1].Time ? beyond : null;
    }

    private WearForecast ForecastOf(int unit, (double Time, double Value)[] known)
    {
        StraightLine[] others = [.. lines.Where((_, i) => i != unit)];
        double[] logRates = [.. others.Select(l => Math.Log(1000 * l.Slope))];
        double[] starts = [.. others.Select(l => l.Intercept)];
        var prior = new WearPrior(
            logRates.Average(), Variance(logRates), starts.Average(), Math.Sqrt(Variance(starts)), $"the other units");
        var scatter = Median.Of([.. others.Select(l => l.ResidualStandardDeviation)]);
        return Filter.Forecast(Filter.Follow(prior, known.Select((p, i) => new Observation(p.Time, p.Value, scatter, i))), level);
    }

    private static double Variance(double[] values) =>
        values.Sum(v => (v - values.Average()) * (v - values.Average())) / (values.Length - 1);
}
