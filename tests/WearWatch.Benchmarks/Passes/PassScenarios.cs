using WearWatch.SensorSim.Passes;

namespace WearWatch.Benchmarks.Passes;

/// <summary>The days that are simulated, sound and faulty.</summary>
internal static class PassScenarios
{
    private static readonly (double, double) Few = (10, 30);

    public static IReadOnlyList<PassScenario> All { get; } =
    [
        new("sound, with a tape reading", (PassAsked.Near, 0.95), (PassAsked.Covered, 0.9), (PassAsked.Kept, 0.97)),
        new("sound, no tape", (PassAsked.Kept, 0.9)) { Taped = false },
        new("sound, no tape, 10 to 30 pitches", (PassAsked.Kept, 0.9)) { Taped = false, Pitches = Few },
        .. new[] { 0.0017, 0.003, 0.01 }.SelectMany(
            share => new[] { true, false }.Select(taped => Rippled(share, taped, (30, 60)))),
        Rippled(0.01, true, Few),
        Rippled(0.01, false, Few),
        Moved(0.3),
        Moved(0.5),
        Moved(1.5),
        new("chain replaced at noon, no tape", (PassAsked.Refused, 0.9))
        {
            Taped = false,
            Fault = random => Later(48, new RigFault(MovedByMm: 25.4 * (0.05 + 0.9 * random.NextDouble()))),
        },
        new("clocks 100 ppm apart", (PassAsked.Covered, 0.9))
        {
            Rig = (sound, random) => sound with { ClockPpm = Even(random, 100) },
        },
        new("delay to 0.5 ms, speed varies", (PassAsked.Covered, 0.9))
        {
            Rig = (sound, random) => sound with { DelayMicroseconds = Even(random, 500), SpeedShare = (0.7, 1.3) },
        },
        new("runs backwards", (PassAsked.Refused, 0.9)) { Fault = _ => _ => new RigFault(RunsBackwards: true) },
        new("runs backwards, no tape", (PassAsked.Refused, 0.9))
        {
            Taped = false,
            Fault = _ => _ => new RigFault(RunsBackwards: true),
        },
        new("sensors swapped", (PassAsked.Refused, 0.9)) { Fault = _ => _ => new RigFault { AreSwapped = true } },
        new("an eighth of the bursts backwards", (PassAsked.Kept, 0.9))
        {
            Fault = _ => i => new RigFault(RunsBackwards: i % 8 == 3),
        },
        Sees(RollersSeen.EverySecond, "each second roller", true),
        Sees(RollersSeen.EverySecond, "each second roller, no tape", false),
        Sees(RollersSeen.HalfPitches, "half pitches", true),
        Sees(RollersSeen.HalfPitches, "half pitches, no tape", false),
        Sees(RollersSeen.EverySecondAtSecond, "each second at one sensor", true),
        new("30 K swing, 2 h lag", (PassAsked.Kept, 0.97), (PassAsked.Covered, 0.9))
        {
            Day = new RigDay(SwingK: 30, LagHours: 2),
        },
        new("7 and 8 teeth", (PassAsked.Kept, 0.9), (PassAsked.Covered, 0.9)) { Teeth = (7, 8) },
        new("pitch 12.7 to 50.8 mm, 0.5 to 2 m/s, 9 to 25 teeth", (PassAsked.Kept, 0.9), (PassAsked.Covered, 0.9))
        {
            PitchMm = (12.7, 50.8),
            Teeth = (9, 25),
            Rig = (sound, random) => sound with { SpeedMetresPerSecond = 0.5 * Math.Pow(4, random.NextDouble()) },
        },
    ];

    private static PassScenario Rippled(double share, bool taped, (double, double) pitches) =>
        new(FormattableString.Invariant(
            $"run-out {100 * share:0.##} %, swing 1.5 %{(taped ? "" : ", no tape")}")
            + (pitches == Few ? ", 10 to 30 pitches" : ""),
            (PassAsked.Kept, 0.9))
        {
            Taped = taped,
            Pitches = pitches,
            Teeth = (9, 17),
            Rig = (sound, random) => sound with
            {
                RunOut = share,
                RunOutTwice = share * random.NextDouble(),
                ShaftSwing = 0.015,
                SwingSeconds = (0.4, 9),
            },
        };

    /// <summary>At any burst from one hour after midnight to one hour before.</summary>
    private static PassScenario Moved(double mm) =>
        new(FormattableString.Invariant($"moved by {mm} mm at any hour"), (PassAsked.Refused, 0.95))
        {
            Fault = random => Later(random.Next(4, 93), new RigFault(MovedByMm: random.Next(2) == 0 ? mm : -mm)),
        };

    private static PassScenario Sees(RollersSeen seen, string name, bool taped) =>
        new(name, (PassAsked.Refused, 0.97)) { Taped = taped, Fault = _ => _ => new RigFault { Seen = seen } };

    private static Func<int, RigFault> Later(int from, RigFault fault) => burst => burst < from ? default : fault;

    private static double Even(Random random, double most) => most * (2 * random.NextDouble() - 1);
}
