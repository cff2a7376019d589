using MathNet.Numerics.Distributions;
using WearWatch.Benchmarks.Rivals;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Years;

/// <summary>The oracle: it knows of every chain when it reaches its limit, and measures nothing.</summary>
internal sealed class Oracle : PlannedWay
{
    public override string Name => "oracle";

    public override bool Measures(Position position, DateTimeOffset now) => false;

    public override WearForecast Forecast(Position position) =>
        StraightLineWay.Told(_ => Math.Max(0, position.Life.ReachesLimitAt - position.Hours));

    protected override double LastHours(Position position) => position.Hours;
}

/// <summary>Measured every four weeks, a straight line through the readings, and the planner of WearWatch.</summary>
internal sealed class StraightLineWay : PlannedWay
{
    private const int FewestReadings = 3;

    public override string Name => "straight line, same planner";

    public override bool Measures(Position position, DateTimeOffset now) =>
        position.MeasuredAt is not { } last || now >= last.AddDays(28);

    public override WearForecast? Forecast(Position position)
    {
        if (position.Observations.Count < FewestReadings) return null;
        var last = position.Observations[^1].HoursSinceFitting;
        var answer = LeastSquares.Ask(
            [.. position.Observations.Select(o => o.HoursSinceFitting)],
            [.. position.Observations.Select(o => o.ElongationPercent)], TrueLife.LimitPercent);
        if (answer is not { Middle: { } middle, Early: { } early }) return null;
        var late = answer.Late ?? double.PositiveInfinity;
        var end = Normal.InvCDF(0, 1, 0.95);
        return Told(share => Normal.InvCDF(0, 1, share) is var z && z < 0
            ? Math.Max(0, middle - last + z / end * (middle - early))
            : Math.Max(0, middle - last + (z > 0 ? z / end * (late - middle) : 0)));
    }

    /// <summary>A forecast from its quantiles.</summary>
    internal static WearForecast Told(Func<double, double> hoursAt)
    {
        double[] hours = [.. Enumerable.Range(1, 99).Select(i => Math.Min(hoursAt(i / 100.0), WearForecast.HorizonHours))];
        return new WearForecast
        {
            LimitPercent = TrueLife.LimitPercent,
            ProbabilityPassed = hours.Count(h => h <= 0) / 100.0,
            PercentilesHours = hours,
        };
    }
}
