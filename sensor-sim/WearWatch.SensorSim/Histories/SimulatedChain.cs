using WearWatch.SensorSim.Wear;

namespace WearWatch.SensorSim.Histories;

/// <summary>One chain from its fitting to its removal, with its true wear.</summary>
/// <param name="Path">Its true elongation over its running hours.</param>
/// <param name="Lot">The works' lot it came from.</param>
/// <param name="LimitPercent">The elongation at which it is to be replaced.</param>
/// <param name="FittedAtHour">The line's running hours when it was fitted.</param>
/// <param name="RemovedAtHour">The line's running hours when it is taken out.</param>
internal sealed record SimulatedChain(WearPath Path, string Lot, double LimitPercent, double FittedAtHour, double RemovedAtHour)
{
    /// <summary>Its running hours at which it reaches its limit.</summary>
    public double LifeHours { get; } = Path.HoursAt(LimitPercent);

    /// <summary>Its own running hours at the line's.</summary>
    public double HoursAt(double lineHour) => lineHour - FittedAtHour;

    /// <summary>Running hours left to the limit; zero when it is passed.</summary>
    public double HoursLeftAt(double lineHour) => Math.Max(0, LifeHours - HoursAt(lineHour));
}
