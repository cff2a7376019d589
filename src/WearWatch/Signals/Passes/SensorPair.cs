namespace WearWatch.Signals.Passes;

/// <summary>Two sensors on a straight run of a chain.</summary>
/// <param name="PitchMm">Nominal pitch of the chain in millimetres.</param>
/// <param name="DistanceMm">
/// Distance from where the first sensor sees a roller to where the second does, in millimetres at 20 degrees.
/// </param>
/// <param name="DistanceUncertaintyMm">Standard uncertainty of that distance in millimetres; above zero.</param>
/// <param name="DriverTeeth">Teeth of the sprocket that pulls the chain; null when nobody told.</param>
public sealed record SensorPair(double PitchMm, double DistanceMm, double DistanceUncertaintyMm, int? DriverTeeth)
{
    /// <summary>Fewer pitches between the sensors tell too little: see docs/signals.md.</summary>
    public const double FewestPitches = 8;

    /// <summary>Pitches of nominal length that the distance holds.</summary>
    public double NominalPitches => DistanceMm / PitchMm;

    /// <summary>Elongation in percent when so many pitches lie between the sensors and the chain has a temperature.</summary>
    /// <remarks>
    /// <c>e = 100 (D/(n p (1 + alpha (T - 20))) - 1)</c>; D distance, n pitches, p nominal pitch, T temperature of the chain,
    /// alpha expansion of steel. Geometry.
    /// </remarks>
    /// <param name="pitches">Pitches between the sensors, n.</param>
    /// <param name="temperatureC">Temperature of the chain in degrees Celsius.</param>
    public double ElongationPercent(double pitches, double temperatureC) =>
        100 * (DistanceMm / (pitches * PitchMm * Expansion(temperatureC)) - 1);

    /// <summary>Pitches between the sensors at an elongation in percent, at a temperature in degrees Celsius.</summary>
    public double PitchesAt(double elongationPercent, double temperatureC) =>
        DistanceMm / (PitchMm * (1 + elongationPercent / 100) * Expansion(temperatureC));

    /// <summary>
    /// Standard uncertainty of the elongation by what stays the same from day to day, in percent: the distance as it was stated,
    /// and the speed ripple.
    /// </summary>
    /// <param name="pitches">Pitches between the sensors.</param>
    public double StandingUncertaintyPercent(double pitches)
    {
        var distance = 100 * DistanceUncertaintyMm / DistanceMm;
        var ripple = 100 * DistanceMm / (pitches * pitches * PitchMm) * ChordalRipple.UncertaintyPitches(DriverTeeth, pitches);
        return Math.Sqrt(distance * distance + ripple * ripple);
    }

    private static double Expansion(double temperatureC) =>
        1 + Gauging.Gauge.SteelExpansionPerKelvin * (temperatureC - Gauging.Gauge.ReferenceTemperatureC);
}
