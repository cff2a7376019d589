using System.Globalization;
using WearWatch.Gauging;

namespace WearWatch.Signals.Passes;

/// <summary>Makes one elongation of a day of passes, or says why it does not.</summary>
/// <remarks>
/// Each burst gives the part of a pitch (<see cref="BurstPhase"/>); brought to 20 degrees of the chain, the median of the day
/// counts, and bursts far from it do not. The whole pitches come from the pattern of the joints (<see cref="JointPattern"/>), or
/// from what is expected where the pattern does not tell. Derivation, sources and figures: docs/signals.md.
/// </remarks>
public static class PassDay
{
    /// <summary>Fewer bursts make no reading.</summary>
    public const int FewestBursts = 6;

    private const double MostBadShare = 0.15;
    private const double MostUnusedShare = 0.4;
    private const double Outlying = 5;
    private const string CommonPractice = "common practice";

    /// <summary>
    /// The chain's temperature is known within so many kelvin, that of the frame that holds the sensors within so many.
    /// </summary>
    private const double ChainKelvin = 2;

    private const double FrameKelvin = 5;

    /// <summary>Evaluates a day.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="bursts">The day's bursts.</param>
    /// <param name="expected">What is expected; null when nothing is known.</param>
    public static PassOutcome Evaluate(SensorPair pair, IReadOnlyList<PassBurst> bursts, PassExpectation? expected)
    {
        var day = DayOfBursts.Of(pair, bursts);
        var faults = day.Faults;
        var (fraction, scatter) = day.Phase();
        if (day.Moved(scatter) is { } jump)
            return Doubt(PassDoubt.SensorMoved, Text(
                $"The phase moved by {jump:0.000} pitches within the day ({jump * pair.PitchMm:0.0} mm): a sensor moved. ")
                    + "Measure the distance again.");
        if (day.Used.Count < FewestBursts || day.Used.Count < (1 - MostUnusedShare) * bursts.Count)
            return Doubt(PassDoubt.TooLittle,
                Text($"Only {day.Used.Count} of {bursts.Count} bursts can be used. Look whether both sensors see the chain."));
        if (faults.Missed + faults.Doubled > MostBadShare * faults.Passes)
            return Doubt(PassDoubt.BadSignal, Text(
                $"{faults.Missed} pulses missed and {faults.Doubled} too many of {faults.Passes}: clean and set the sensors."));

        if (Count(pair, day.Count(pair, fraction), fraction, expected) is not { } whole)
            return Doubt(
                PassDoubt.WrongCount, "How many pitches lie between the sensors is not known: measure the chain once by tape.");

        var pitches = whole.Pitches + fraction;
        var elongation = pair.ElongationPercent(pitches, Gauge.ReferenceTemperatureC);
        var reading = new PassReading(
            pitches, elongation, Budget(pair, pitches, fraction, scatter, elongation), day.MeanTemperatureC, day.Used.Count,
            whole.ByPattern);
        if (expected?.Allows(elongation, reading.StandardUncertaintyPercent) == false)
            return Doubt(whole.Differs ? PassDoubt.WrongCount : PassDoubt.SensorMoved, Text(
                $"{elongation:0.00} % where {expected.ElongationPercent:0.00} % was expected: no chain wears so. A sensor was ")
                    + "moved, or the chain was changed or shortened and nobody recorded it.");
        return new PassOutcome.Measured(reading) { Faults = faults };

        PassOutcome.NotBelieved Doubt(PassDoubt doubt, string why) => new(doubt, why) { Faults = faults };
    }

    /// <summary>
    /// The whole pitches: by the pattern, or the number that brings the elongation nearest to what is expected.
    /// </summary>
    private static (int Pitches, bool ByPattern, bool Differs)? Count(
        SensorPair pair, int? byPattern, double fraction, PassExpectation? expected)
    {
        int? byExpectation = expected is { } e && pair.NominalPitches * e.StandardDeviationPercent / 100 < 0.2
            ? (int)Math.Round(pair.PitchesAt(e.ElongationPercent, Gauge.ReferenceTemperatureC) - fraction)
            : null;
        return (byPattern ?? byExpectation) is { } count
            ? (count, byPattern is not null, byPattern is not null && byExpectation is not null && byPattern != byExpectation)
            : null;
    }

    private static IReadOnlyList<UncertaintyComponent> Budget(
        SensorPair pair, double pitches, double fraction, double scatterPitches, double elongation)
    {
        var percentPerPitch = (100 + elongation) / pitches;
        var kelvin = Math.Sqrt((ChainKelvin * ChainKelvin + FrameKelvin * FrameKelvin) / 3);
        return
        [
            new("scatter of the bursts", percentPerPitch * scatterPitches, true, "the day's bursts"),
            new("distance of the sensors", 100 * pair.DistanceUncertaintyMm / pair.DistanceMm, false,
                "stated when it was measured"),
            new("speed ripple", percentPerPitch * ChordalRipple.UncertaintyPitches(pair.DriverTeeth, fraction), false,
                "geometry, docs/signals.md"),
            new("temperature", 100 * Gauge.SteelExpansionPerKelvin * kelvin, true,
                $"chain within {ChainKelvin} K, frame within {FrameKelvin} K, {CommonPractice}"),
        ];
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
