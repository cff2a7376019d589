using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Speed;

/// <summary>Chains to measure time on; what they look like matters little, that they are the same every time matters.</summary>
internal static class SimulatedChain
{
    private const double ScatterPercent = 0.03;

    /// <summary>So many chains with so many readings each, on a bending track up to about 2.5 %.</summary>
    public static FleetChain[] Many(int chains, int readings, int seed)
    {
        var chance = new Random(seed);
        return [.. Enumerable.Range(0, chains).Select(i => One(i, readings, chance))];
    }

    private static FleetChain One(int number, int readings, Random chance)
    {
        var card = new ChainCard
        {
            Name = FormattableString.Invariant($"C{number:00000}"),
            Line = FormattableString.Invariant($"L{number % 25:00}"),
            PitchMm = 25.4,
            FittedCounter = RunningHours.Zero,
            Duty = new Duty
            {
                RelativeLoad = 0.2 + chance.NextDouble(),
                SpeedMetresPerSecond = 0.3 + 3 * chance.NextDouble(),
                Lubrication = (LubricationState)chance.Next(4),
                Dust = (DustLevel)chance.Next(3),
            },
        };
        var rate = 0.2 * (card.Duty.RelativeLoad!.Value / 0.5)
            * Math.Exp(0.4 * (int)card.Duty.Lubrication! + 0.3 * Normal(chance));
        var lifeHours = 1000 * (1 + chance.NextDouble()) / rate;
        return new FleetChain(card,
        [
            .. Enumerable.Range(1, readings).Select(i =>
            {
                var hours = lifeHours * i / readings;
                var wear = rate * hours / 1000;
                return new Observation(
                    hours, 0.2 + wear + 0.05 * wear * wear + ScatterPercent * Normal(chance), ScatterPercent, i - 1);
            })
        ]);
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
