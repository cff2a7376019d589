using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Wear;

namespace WearWatch.SensorSim.Tests;

/// <summary>Test data with defaults, so that a test states only what it is about.</summary>
internal static class A
{
    public static DateTimeOffset HistoryEnd { get; } = new(2026, 6, 17, 5, 30, 0, TimeSpan.Zero);

    public static Mill Mill(int seed = 11, int years = 3) => new(HistoryEnd, seed, years);

    public static MillWear Constants(
        double newPercent = 0, double runInPercent = 0, double runInHours = 35, double accelerationFromPercent = 7.9,
        double accelerationPerPercent = 1) =>
        new(newPercent, runInPercent, runInHours, accelerationFromPercent, accelerationPerPercent);

    public static RateHistory Rate(double percentPer1000Hours = 0.2, Chance? wander = null, RateStep? change = null) =>
        new(percentPer1000Hours, wander, change);

    public static WearPath Path(MillWear? constants = null, RateHistory? rate = null) =>
        new(constants ?? Constants(), rate ?? Rate());
}
