using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Wear;

/// <summary>What a chain's wear depends on in this mill.</summary>
/// <remarks>
/// Simulated physics, not measured: <c>ln rate = ln base + ln(load/0.5) + 0.6 ln(speed/0.6) + lubrication + dust</c>, and from
/// chain to chain normal with 0.25. Load and speed follow Archard's law (J. Appl. Phys. 24 (1953) 981) in direction; the
/// figures are assumed.
/// </remarks>
internal static class WearLaw
{
    private const double LogRateScatter = 0.25;

    /// <summary>The rate that the positions of a mill have in the middle, in percent per 1,000 running hours.</summary>
    public static double ExpectedRate(MillPosition position) => Math.Exp(
        Math.Log(BaseRate(position.Size.Family))
        + Math.Log(position.Duty.LoadRel / 0.5)
        + 0.6 * Math.Log(position.Duty.SpeedMetresPerSecond / 0.6)
        + EffectOf(position.Duty.Lubrication)
        + EffectOf(position.Duty.Dust));

    /// <summary>The rate of one chain there, in percent per 1,000 running hours.</summary>
    public static double RateOfOne(MillPosition position, Chance chance) =>
        ExpectedRate(position) * Math.Exp(chance.Normal(0, LogRateScatter));

    /// <summary>How one chain wears, apart from its rate.</summary>
    public static MillWear ConstantsOfOne(Chance chance) => new(
        NewPercent: chance.Between(0, 0.15),
        RunInPercent: chance.Normal(0.15, 0.05, 0.05, 0.25),
        RunInHours: chance.Normal(35, 6, 20, 50),
        AccelerationFromPercent: chance.Normal(2.6, 0.35, 2.0, 3.5),
        AccelerationPerPercent: chance.Between(0.8, 1.9));

    private static double BaseRate(MillFamily family) => family switch
    {
        MillFamily.Roller => 0.15,
        MillFamily.DoublePitch => 0.09,
        MillFamily.Conveyor => 0.11,
        MillFamily.Leaf => 0.16,
        MillFamily.WeldedSteel => 0.16,
        _ => 0.07,
    };

    private static double EffectOf(Lubrication lubrication) => lubrication switch
    {
        Lubrication.Auto => -0.25,
        Lubrication.Manual => 0,
        Lubrication.Poor => 0.6,
        _ => 1.3,
    };

    private static double EffectOf(Dust dust) => dust switch
    {
        Dust.Clean => 0,
        Dust.Moderate => 0.25,
        _ => 0.7,
    };
}
