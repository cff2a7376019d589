using WearWatch.SensorSim.Passes;
using WearWatch.Signals.Passes;

namespace WearWatch.Benchmarks.Passes;

/// <summary>A day of bursts of a simulated rig: six seconds each, chain and frame following the day's temperature.</summary>
/// <param name="Bursts">Bursts in the day.</param>
/// <param name="SwingK">By how much the chain warms over the day, in kelvin; the frame by a third.</param>
/// <param name="LagHours">By how much the chain's temperature lags behind the one that is told.</param>
internal sealed record RigDay(int Bursts = 96, double SwingK = 15, double LagHours = 0)
{
    private const double MeanC = 30;
    private const double Seconds = 6;
    private static readonly DateTimeOffset Begin = new(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>What the sensors send in a day, from 0, with what is wrong at a burst.</summary>
    public List<PassBurst> Of(PassRig rig, Func<int, RigFault>? fault = null, int day = 0) =>
    [
        .. Enumerable.Range(0, Bursts).Select(i =>
        {
            var hour = 24.0 * i / Bursts;
            var (first, second) = rig.Run(
                Seconds, MeanC + Swing(hour - LagHours), 20 + Swing(hour) / 3, fault?.Invoke(i) ?? default);
            return new PassBurst(Begin.AddDays(day).AddHours(hour), first, second, Math.Round(MeanC + Swing(hour), 1));
        }),
    ];

    private double Swing(double hour) => -SwingK / 2 * Math.Cos(2 * Math.PI * hour / 24);
}
