namespace WearWatch.Gauging;

/// <summary>Turns a measured length into an elongation with its uncertainty, or says why it does not.</summary>
public static class Gauge
{
    /// <summary>
    /// Linear expansion of steel per kelvin. From memory: 11 to 12 millionths; source for the effect: docs/references.md [20].
    /// </summary>
    public const double SteelExpansionPerKelvin = 11.5e-6;

    /// <summary>The temperature to which lengths refer, ISO 1. From memory.</summary>
    public const double ReferenceTemperatureC = 20;

    /// <summary>Shorter than this share of nominal no chain is, longer than <see cref="LongestShare"/> none runs.</summary>
    public const double ShortestShare = 0.98;

    /// <summary>A chain of this share of nominal has long left its sprockets.</summary>
    public const double LongestShare = 1.10;

    /// <summary>Half of the tolerance band of a new chain (0 to +0.15 %), taken as rectangular. From memory: ISO 606.</summary>
    private const double NewChainHalfTolerancePercent = 0.075;

    /// <summary>Standard uncertainty of the chain's temperature from a guess of plus or minus 5 K.</summary>
    private const double TemperatureUncertaintyKelvin = 2.886751345948129;

    /// <summary>Gauges a length over a number of pitches.</summary>
    /// <remarks><c>e = 100 (L20 - N p) / (N p)</c>, with <c>L20 = L / (1 + alpha (T - 20))</c>; L measured length, N pitches,
    /// p nominal pitch, T temperature of the chain, alpha expansion of steel. Source: docs/references.md [4]. Uncertainty by
    /// JCGM 100: tool and reading, new-chain tolerance, temperature in quadrature.</remarks>
    /// <param name="pitchMm">Nominal pitch in millimetres.</param>
    /// <param name="pitches">Number of pitches in the length.</param>
    /// <param name="lengthMm">Measured length in millimetres.</param>
    /// <param name="tool">With what it was measured.</param>
    /// <param name="temperatureC">Temperature of the chain; null is taken as 20 degrees.</param>
    /// <param name="lengthUncertaintyMm">
    /// Standard uncertainty of the length where it was told, in millimetres; null for what is usual.
    /// </param>
    public static GaugeOutcome Measure(
        double pitchMm, int pitches, double lengthMm, Tool tool, double? temperatureC = null, double? lengthUncertaintyMm = null)
    {
        if (!(pitchMm > 0)) return new GaugeOutcome.Refused("pitch_mm", $"The pitch must be above zero.");
        if (pitches < 1)
            return new GaugeOutcome.Refused("pitches", $"Count at least one pitch; a length over no pitch says nothing.");
        if (!(lengthMm > 0) || double.IsInfinity(lengthMm))
            return new GaugeOutcome.Refused("length", $"The length must be a number above zero.");
        if (temperatureC is < -60 or > 400)
            return new GaugeOutcome.Refused("temperature_c", $"A chain that is measured has between -60 and 400 degrees "
                + $"Celsius.");

        var nominalMm = pitches * pitchMm;
        var lengthAt20Mm =
            lengthMm / (1 + SteelExpansionPerKelvin * ((temperatureC ?? ReferenceTemperatureC) - ReferenceTemperatureC));
        var scatterPercent = 100 * (lengthUncertaintyMm ?? LengthScatterMm(tool)) / nominalMm;
        var temperaturePercent = 100 * SteelExpansionPerKelvin * TemperatureUncertaintyKelvin;
        var tolerancePercent = NewChainHalfTolerancePercent / Math.Sqrt(3);
        var elongation = new Elongation(
            100 * (lengthAt20Mm - nominalMm) / nominalMm,
            Math.Sqrt(
                scatterPercent * scatterPercent + tolerancePercent * tolerancePercent + temperaturePercent * temperaturePercent),
            scatterPercent);

        return Judge(elongation, pitchMm, pitches, lengthMm);
    }

    /// <summary>Gauges a length with all that is known of how it was measured.</summary>
    /// <remarks>
    /// As a plain length is gauged, but against the measured length when new where there is one, corrected for the temperatures
    /// of chain and tool, <c>L20 = L (1 + alpha (Ttool - 20))/(1 + alpha (Tchain - 20))</c>; an odd number of pitches is
    /// corrected for when the first link was told, and has its own uncertainty when not. The budget is
    /// <see cref="UncertaintyBudget.Of"/>.
    /// </remarks>
    public static GaugeOutcome Measure(MeasuredSpan span)
    {
        if (span.LengthsMm.Count == 0) return new GaugeOutcome.Refused("length", $"A length is wanted.");
        foreach (var lengthMm in span.LengthsMm)
        {
            var plain = Measure(span.PitchMm, span.Pitches, lengthMm, span.Instrument.Tool, span.ChainTemperatureC);
            if (plain is GaugeOutcome.Refused) return plain;
        }

        if (span.ToolTemperatureC is < -60 or > 100)
            return new GaugeOutcome.Refused("tool_temperature_c", $"A tool has between -60 and 100 degrees Celsius.");
        if (span.New is { } fresh && !(fresh.LengthMm > 0.9 * span.NominalMm && fresh.LengthMm < 1.1 * span.NominalMm))
            return new GaugeOutcome.Refused("new_length", $"The length when new must be that of the same number of pitches.");
        if (span.OddShare == 0)
            return new GaugeOutcome.Refused("pitches",
                $"One outer link does not grow from pin to pin; measure an even number of pitches.");

        var budget = UncertaintyBudget.Of(span);
        var elongation = new Elongation(PercentOf(span), budget.StandardUncertaintyPercent, budget.ScatterPercent);
        return Judge(elongation, span.PitchMm, span.Pitches, span.LengthMm);
    }

    /// <summary>The elongation alone, in percent.</summary>
    internal static double PercentOf(MeasuredSpan span)
    {
        var lengthAt20Mm = span.LengthMm;
        if (span.ChainTemperatureC is { } chainC)
            lengthAt20Mm *= Expansion(span.ToolTemperatureC ?? ReferenceTemperatureC) / Expansion(chainC);
        var newMm = span.New?.LengthMm ?? span.NominalMm;
        return 100 * (lengthAt20Mm - newMm) / newMm / span.OddShare;
    }

    private static double Expansion(double temperatureC) => 1 + SteelExpansionPerKelvin * (temperatureC - ReferenceTemperatureC);

    private static GaugeOutcome Judge(Elongation elongation, double pitchMm, int pitches, double lengthMm)
    {
        var nominalMm = pitches * pitchMm;
        return lengthMm < ShortestShare * nominalMm || lengthMm > LongestShare * nominalMm
            ? new GaugeOutcome.Doubted(elongation, $"{lengthMm:0.##} mm over {pitches} pitches of {pitchMm:0.###} mm is "
                + $"{elongation.Percent:0.0} %: "
                + $"no chain runs so. Check the count, the unit and the decimal point.")
            : new GaugeOutcome.Measured(elongation);
    }

    /// <summary>Standard deviation of one measured length by tool, in millimetres.</summary>
    /// <remarks>Tape: class II at up to 1 m, 0.5/sqrt(3) mm, and two graduations read to half a millimetre, give 0.50 mm
    /// (docs/references.md [20]). Caliper and sensor: common practice.</remarks>
    private static double LengthScatterMm(Tool tool) => tool == Tool.Tape ? 0.5 : 0.12;
}
