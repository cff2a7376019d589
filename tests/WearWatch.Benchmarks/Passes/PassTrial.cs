using WearWatch.SensorSim.Passes;
using WearWatch.Signals.Passes;

namespace WearWatch.Benchmarks.Passes;

/// <summary>Simulates the rigs of a scenario and counts what becomes of their days.</summary>
internal static class PassTrial
{
    private const double PitchMm = 25.4;
    private const double DistanceUncertaintyMm = 0.05;
    private const double TapePercent = 0.08;

    public static PassScore Of(PassScenario scenario, int runs, int seed)
    {
        var score = new PassScore(runs);
        for (var run = 0; run < runs; run++) Run(scenario, new Random(seed + run), seed + run, score);
        return score;
    }

    /// <summary>A rig, the sensors as somebody measured them in, and the chain's expectation by tape.</summary>
    public static (PassRig Rig, SensorPair Pair, PassExpectation Tape) Rig(PassScenario scenario, Random random, int seed)
    {
        var (fewest, most) = scenario.Pitches;
        var distanceMm = PitchMm * (fewest + (most - fewest) * random.NextDouble());
        var teeth = random.Next(scenario.Teeth.Fewest, scenario.Teeth.Most + 1);
        var setup = scenario.Rig(new RigSetup(PitchMm, 120, teeth, distanceMm, 1.0), random);
        var rig = new PassRig(setup, 2.5 * random.NextDouble(), seed);
        var pair = new SensorPair(PitchMm, distanceMm + DistanceUncertaintyMm * Normal(random), DistanceUncertaintyMm, teeth);
        return (rig, pair, new PassExpectation(rig.TrueElongationPercent + TapePercent * Normal(random), TapePercent, 7));
    }

    private static void Run(PassScenario scenario, Random random, int seed, PassScore score)
    {
        var (rig, pair, tape) = Rig(scenario, random, seed);
        var outcome = PassDay.Evaluate(pair, scenario.Day.Of(rig, scenario.Fault(random)), scenario.Taped ? tape : null);
        if (outcome is not PassOutcome.Measured { Reading: var reading })
        {
            var doubt = ((PassOutcome.NotBelieved)outcome).Doubt.ToString();
            score.Refused[doubt] = score.Refused.GetValueOrDefault(doubt) + 1;
            return;
        }

        var off = Math.Abs(reading.ElongationPercent - rig.TrueElongationPercent);
        if (off > 0.1) score.Wrong++;
        else score.Kept++;
        if (off <= 2 * reading.StandardUncertaintyPercent) score.Covered++;
        if (off <= 0.02) score.Near++;
        score.Uncertainty += reading.StandardUncertaintyPercent;
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
