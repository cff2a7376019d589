using WearWatch.SensorSim.Passes;
using WearWatch.Signals.Passes;

namespace WearWatch.Benchmarks.Passes;

/// <summary>Simulates the rigs of a scenario and counts what becomes of their days.</summary>
internal static class PassTrial
{
    private const double DistanceUncertaintyMm = 0.05;
    private const double TapePercent = 0.08;

    /// <summary>The rate is known within a quarter: at most it is so many times as much.</summary>
    private const double RateDoubt = 1.65;

    private static readonly PassScenario Sound = new("sound") { Day = new RigDay(Bursts: 48) };

    public static PassScore Of(PassScenario scenario, int runs, int seed)
    {
        var score = new PassScore(runs);
        for (var run = 0; run < runs; run++) Run(scenario, new Random(seed + run), seed + run, score);
        return score;
    }

    /// <summary>The wear of the chains of <see cref="Days"/>, in percent a day: 0.2 % in 1,000 hours, day and night.</summary>
    public const double WearPercentPerDay = 0.0048;

    /// <summary>
    /// Days one after the other at rigs that wear, each held against the earlier ones that were believed. For each rig the days,
    /// from 0, that were refused.
    /// </summary>
    /// <param name="movedMm">By how far the second sensor stands off on a day, of a run's own chance.</param>
    /// <param name="days">How many days.</param>
    /// <param name="runs">How many rigs.</param>
    /// <param name="seed">The first one's seed.</param>
    public static IReadOnlyList<IReadOnlyList<int>> Days(Func<Random, Func<int, double>> movedMm, int days, int runs, int seed) =>
        [.. Enumerable.Range(seed, runs).AsParallel().AsOrdered().Select(run => Refused(movedMm, days, run))];

    /// <summary>A rig, the sensors as somebody measured them in, and the chain's expectation by tape.</summary>
    public static (PassRig Rig, SensorPair Pair, PassExpectation Tape) Rig(PassScenario scenario, Random random, int seed)
    {
        var (fewest, most) = scenario.Pitches;
        var (least, largest) = scenario.PitchMm;
        var pitchMm = largest > least ? least * Math.Pow(largest / least, random.NextDouble()) : least;
        var distanceMm = pitchMm * (fewest + (most - fewest) * random.NextDouble());
        var teeth = random.Next(scenario.Teeth.Fewest, scenario.Teeth.Most + 1);
        var setup = scenario.Rig(new RigSetup(pitchMm, 120, teeth, distanceMm, 1.0), random);
        var rig = new PassRig(setup, 2.5 * random.NextDouble(), seed);
        var pair = new SensorPair(
            pitchMm, distanceMm + DistanceUncertaintyMm * Normal(random), DistanceUncertaintyMm, teeth);
        return (rig, pair, new PassExpectation(rig.TrueElongationPercent + TapePercent * Normal(random), TapePercent, 7));
    }

    private static List<int> Refused(Func<Random, Func<int, double>> movedMm, int days, int seed)
    {
        var random = new Random(seed);
        var (rig, pair, expected) = Rig(Sound, random, seed);
        var (moved, believed, refused) = (movedMm(random), new List<PassCourseDay>(), new List<int>());
        for (var day = 0; day < days; day++)
        {
            var bursts = Sound.Day.Of(rig, _ => new RigFault(MovedByMm: moved(day)), day);
            var course = new PassCourse(believed, RateDoubt * WearPercentPerDay);
            var outcome = PassDay.Against(PassDay.Evaluate(pair, bursts, expected), course, day);
            if (outcome is PassOutcome.Measured { Reading: var told })
            {
                believed.Add(new PassCourseDay(day, told.ElongationPercent, told.DayToDayPercent));
                expected = new PassExpectation(told.ElongationPercent, told.StandardUncertaintyPercent, 1)
                {
                    FastestPercentPerDay = RateDoubt * WearPercentPerDay,
                };
            }
            else refused.Add(day);
            rig.Wear(WearPercentPerDay);
        }

        return refused;
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
