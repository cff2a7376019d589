using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Learning.Tests;

/// <summary>Test data with ordinary values, so that a test states only what it is about.</summary>
internal static class A
{
    public static ChainCard Card(
        double? load = 0.5,
        double? speed = 1.0,
        LubricationState? lubrication = LubricationState.Manual,
        DustLevel? dust = DustLevel.Clean,
        string line = "",
        double pitchMm = 25.4) => new()
        {
            Name = "chain",
            Line = line,
            PitchMm = pitchMm,
            Duty = new Duty { RelativeLoad = load, SpeedMetresPerSecond = speed, Lubrication = lubrication, Dust = dust },
        };

    /// <summary>Readings on a straight track from 0.2 %: spread evenly until the chain has worn by 1.6 %.</summary>
    public static Observation[] Track(double percentPer1000Hours, int readings = 8, double scatterPercent = 0.03, int seed = 1)
    {
        var chance = new Random(seed);
        var everyThousandHours = percentPer1000Hours > 0 ? (1.6 / percentPer1000Hours - 0.1) / readings : 0.5;
        return
        [
            .. Enumerable.Range(1, readings).Select(i => everyThousandHours * i).Select((thousandHours, i) => new Observation(
                100 + 1000 * thousandHours,
                0.2 + percentPer1000Hours * (0.1 + thousandHours) + scatterPercent * (chance.NextDouble() - 0.5),
                scatterPercent,
                i))
        ];
    }

    /// <summary>A fleet whose rates follow the law given, but for a spread between like chains.</summary>
    public static FleetChain[] Fleet(
        int chains, Func<ChainCard, double> logRate, double spread = 0.3, int seed = 1, bool lines = false, int lots = 0)
    {
        var chance = new Random(seed);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        return
        [
            .. Enumerable.Range(0, chains).Select(i =>
            {
                var card = Card(
                    load: 0.2 + chance.NextDouble(),
                    speed: 0.3 + 3 * chance.NextDouble(),
                    lubrication: (LubricationState)chance.Next(4),
                    dust: (DustLevel)chance.Next(3),
                    line: lines ? $"L{chance.Next(8)}" : "") with { Lot = lots > 0 ? $"K{chance.Next(lots)}" : "" };
                return new FleetChain(card, Track(Math.Exp(logRate(card) + spread * Normal()), seed: i));
            })
        ];
    }

    public static FleetTrainingOutcome.Trained Training(IReadOnlyList<FleetChain> chains, int seed = 1) =>
        Assert.IsType<FleetTrainingOutcome.Trained>(FleetTraining.Train(chains, seed));
}
