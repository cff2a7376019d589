using WearWatch.SensorSim.Passes;
using WearWatch.Signals.Passes;

namespace WearWatch.Tests.Signals;

/// <summary>A day of bursts of a simulated rig, as the sensors would send them.</summary>
internal static class SimulatedDay
{
    public const double PitchMm = 25.4;

    /// <summary>As on a drive of one metre a second: 11 teeth give a speed ripple of 4.1 %.</summary>
    public static RigSetup Setup(double distanceMm, int teeth = 11) => new(PitchMm, 120, teeth, distanceMm, 1.0);

    /// <summary>96 bursts of six seconds; the chain warms by 15 K over the day, the frame by a third of that.</summary>
    public static List<PassBurst> Of(PassRig rig, Func<int, RigFault>? fault = null, int bursts = 96, double meanC = 30)
    {
        var start = new DateTimeOffset(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);
        return [.. Enumerable.Range(0, bursts).Select(i =>
        {
            var swing = -Math.Cos(2 * Math.PI * i / bursts) / 2;
            var chainC = meanC + 15 * swing;
            var (first, second) = rig.Run(6, chainC, 20 + 5 * swing, fault?.Invoke(i) ?? default);
            return new PassBurst(start.AddMinutes(15 * i), first, second, Math.Round(chainC, 1));
        })];
    }
}
