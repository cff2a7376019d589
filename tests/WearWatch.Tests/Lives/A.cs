using WearWatch.Lives;
using WearWatch.Wear;

namespace WearWatch.Tests.Lives;

/// <summary>Lives, chains and forecasts of which a test states only what it is about.</summary>
internal static class A
{
    public static Life Life(double hours, bool failed = true) => new(hours, failed ? LifeEnd.ReachedLimit : LifeEnd.StillRunning);

    public static FittedChain FittedChain(bool removed, double hours, params (double Hours, double Percent)[] readings) =>
        new(true, hours, removed, [.. readings.Select((r, i) => new Observation(r.Hours, r.Percent, 0.05, i))]);

    /// <summary>A forecast with the three quantiles given, straight between them and level outside.</summary>
    public static WearForecast Forecast(double early, double middle, double late) => new()
    {
        LimitPercent = 3,
        ProbabilityPassed = 0,
        PercentilesHours = [.. Enumerable.Range(1, 99).Select(p => Between(p, early, middle, late))],
    };

    public static ScoredForecast ScoredForecast(
        WearForecast? forecast, double lastReading = 900, double standing = 1000, double life = 2000) =>
        new() { Forecast = forecast, LastReadingHours = lastReading, StandingHours = standing, LifeHours = life };

    private static double Between(int percent, double early, double middle, double late) => percent switch
    {
        <= 5 => early,
        <= 50 => early + (middle - early) * (percent - 5) / 45,
        < 95 when double.IsPositiveInfinity(late) => middle,
        < 95 => middle + (late - middle) * (percent - 50) / 45,
        _ => late,
    };
}
