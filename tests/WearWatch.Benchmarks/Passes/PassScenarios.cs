using WearWatch.SensorSim.Passes;

namespace WearWatch.Benchmarks.Passes;

/// <summary>The days that are simulated, sound and faulty.</summary>
internal static class PassScenarios
{
    private static readonly (double, double) Few = (10, 30);

    public static IReadOnlyList<PassScenario> All { get; } =
    [
        new("sound, with a tape reading: within 0.02", PassAsked.Near) { Bar = 0.95 },
        new("sound, with a tape reading: covered", PassAsked.Covered),
        new("sound, with a tape reading: kept", PassAsked.Kept) { Bar = 0.99 },
        new("sound, no tape", PassAsked.Kept) { Taped = false },
        new("sound, no tape, 10 to 30 pitches", PassAsked.Kept) { Taped = false, Pitches = Few },
        .. new[] { 0.0017, 0.003, 0.01 }.SelectMany(share => new[] { true, false }.Select(taped => Rippled(share, taped, (30, 60)))),
        Rippled(0.01, true, Few),
        Rippled(0.01, false, Few),
        Moved(0.3),
        Moved(0.5),
        Moved(1.5),
        new("chain replaced at noon, no tape", PassAsked.Refused)
        {
            Taped = false,
            Fault = random => Later(48, new RigFault(MovedByMm: 25.4 * (0.05 + 0.9 * random.NextDouble()))),
        },
        new("clocks 100 ppm apart", PassAsked.Covered) { Rig = (sound, random) => sound with { ClockPpm = Even(random, 100) } },
        new("delay to 0.5 ms, speed varies", PassAsked.Covered)
        {
            Rig = (sound, random) => sound with { DelayMicroseconds = Even(random, 500), SpeedShare = (0.7, 1.3) },
        },
        new("runs backwards", PassAsked.Refused) { Fault = _ => _ => new RigFault(RunsBackwards: true) },
        new("runs backwards, no tape", PassAsked.Refused)
        {
            Taped = false,
            Fault = _ => _ => new RigFault(RunsBackwards: true),
        },
        new("sensors swapped", PassAsked.Refused) { Fault = _ => _ => new RigFault { AreSwapped = true } },
        new("an eighth of the bursts backwards", PassAsked.Kept) { Fault = _ => i => new RigFault(RunsBackwards: i % 8 == 3) },
        Sees(RollersSeen.EverySecond, "each second roller", true),
        Sees(RollersSeen.EverySecond, "each second roller, no tape", false),
        Sees(RollersSeen.HalfPitches, "half pitches", true),
        Sees(RollersSeen.HalfPitches, "half pitches, no tape", false),
        Sees(RollersSeen.EverySecondAtSecond, "each second at one sensor", true),
        new("30 K swing, 2 h lag: kept", PassAsked.Kept) { Day = new RigDay(SwingK: 30, LagHours: 2) },
        new("30 K swing, 2 h lag: covered", PassAsked.Covered) { Day = new RigDay(SwingK: 30, LagHours: 2) },
    ];

    private static PassScenario Rippled(double share, bool taped, (double, double) pitches) =>
        new(FormattableString.Invariant(
            $"run-out {100 * share:0.##} %, swing 1.5 %{(taped ? "" : ", no tape")}{(pitches == Few ? ", 10 to 30 pitches" : "")}"),
            PassAsked.Kept)
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
    private static PassScenario Moved(double mm) => new(FormattableString.Invariant($"moved by {mm} mm at any hour"), PassAsked.Refused)
    {
        Bar = 0.95,
        Fault = random => Later(random.Next(4, 93), new RigFault(MovedByMm: random.Next(2) == 0 ? mm : -mm)),
    };

    private static PassScenario Sees(RollersSeen seen, string name, bool taped) =>
        new(name, PassAsked.Refused) { Bar = 1, Taped = taped, Fault = _ => _ => new RigFault { Seen = seen } };

    private static Func<int, RigFault> Later(int from, RigFault fault) => burst => burst < from ? default : fault;

    private static double Even(Random random, double most) => most * (2 * random.NextDouble() - 1);
}
