using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Measuring;

/// <summary>How the people of the mill measure one chain: with what, over how many pitches, where, how often.</summary>
internal sealed record MeasuringHabit
{
    private const double SlipProbability = 0.008;

    // From memory; 11 to 12 millionths.
    private const double SteelExpansionPerKelvin = 11.5e-6;
    private static readonly string[] PlaceNames = ["A", "B", "C"];

    /// <summary>With what.</summary>
    public required Tool Tool { get; init; }

    /// <summary>Whether lengths are written in inches.</summary>
    public required bool InInches { get; init; }

    /// <summary>Over how many pitches; even, since inner and outer links wear differently.</summary>
    public required int Pitches { get; init; }

    /// <summary>The marked sections of a long chain; one without a name on a short one.</summary>
    public required IReadOnlyList<string> Places { get; init; }

    /// <summary>How much each place wears against the worst one.</summary>
    public required IReadOnlyList<double> WearShares { get; init; }

    /// <summary>Days between two measuring rounds, in the middle.</summary>
    public required double IntervalDays { get; init; }

    /// <summary>Whether the chain's temperature is written down.</summary>
    public required bool TellsTemperature { get; init; }

    /// <summary>Standard deviation of one length, in millimetres.</summary>
    public double ScatterMm => Tool == Tool.Tape ? 0.45 : 0.11;

    /// <summary>The habit at a position that is measured every so many days.</summary>
    public static MeasuringHabit At(MillPosition position, double intervalDays, Chance chance)
    {
        var tool = position.HasSensors ? Tool.Sensor
            : position.Size.PitchMm < 20 && chance.Happens(0.7) ? Tool.Caliper
            : Tool.Tape;
        var places = PlacesOn(position, chance);
        var worst = chance.Whole(0, places - 1);
        return new MeasuringHabit
        {
            Tool = tool,
            InInches = position.Size.IsInchChain && !position.HasSensors,
            Pitches = PitchesOver(tool == Tool.Caliper ? chance.Between(220, 480) : chance.Between(700, 1900), position),
            Places = places == 1 ? [""] : PlaceNames[..places],
            WearShares = [.. Enumerable.Range(0, places).Select(p => p == worst ? 1 : chance.Between(0.88, 0.99))],
            IntervalDays = position.HasSensors ? 14 : intervalDays,
            TellsTemperature = position.TemperatureC >= 28 || chance.Happens(0.3),
        };
    }

    /// <summary>Measures a chain: the length over the pitches as it is written down, and the slip that went in.</summary>
    /// <param name="pitchMm">Nominal pitch of the chain.</param>
    /// <param name="elongationPercent">Its true elongation there.</param>
    /// <param name="temperatureC">Its temperature.</param>
    /// <param name="slip">The slip that is about to happen; it does not where the length written offers no room for it.</param>
    /// <param name="chance">The scatter.</param>
    public (EnteredLength Told, Slip Slip) Measure(
        double pitchMm, double elongationPercent, double temperatureC, Slip slip, Chance chance)
    {
        // Wear is not quite the same over every stretch that a tape is laid along.
        var atThisStretch = elongationPercent + chance.Normal(0, 0.01 * elongationPercent);
        var laidOver = Pitches + slip switch { Slip.OnePitchTooMany => 1, Slip.OnePitchTooFew => -1, _ => 0 };
        var at20 = laidOver * pitchMm * (1 + atThisStretch / 100);
        var length = at20 * (1 + SteelExpansionPerKelvin * (temperatureC - 20)) + chance.Normal(0, ScatterMm);
        return EnteredLength.Of(length, Tool, InInches).With(slip);
    }

    /// <summary>Mostly none; sensors make none.</summary>
    public Slip DrawSlip(Chance chance) => Tool != Tool.Sensor && chance.Happens(SlipProbability) ? AnySlip(chance) : Slip.None;

    /// <summary>One of the slips, all alike.</summary>
    public static Slip AnySlip(Chance chance) =>
        chance.OneOf([Slip.OnePitchTooMany, Slip.OnePitchTooFew, Slip.DecimalSlip, Slip.SwappedDigits]);

    /// <summary>Two or three on conveyors from 20 m on.</summary>
    private static int PlacesOn(MillPosition position, Chance chance) =>
        position.Size.Family is MillFamily.Roller or MillFamily.Leaf || position.Pitches * position.Size.PitchMm < 20_000
            ? 1
            : chance.Whole(2, 3);

    /// <summary>No more than the half of the chain that lies straight between its wheels.</summary>
    private static int PitchesOver(double lengthMm, MillPosition position) =>
        2 * Math.Clamp((int)Math.Round(lengthMm / position.Size.PitchMm / 2), 2, position.Pitches / 4);
}
