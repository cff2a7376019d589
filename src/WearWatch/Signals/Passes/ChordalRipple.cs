using WearWatch.Drives;

namespace WearWatch.Signals.Passes;

/// <summary>What the uneven run of a chain over its sprocket leaves in the phase.</summary>
/// <remarks>
/// The chain lies on the sprocket as a polygon, so its speed swings once a tooth, that is once a pitch: <c>v/v0 = 1 - (4 r/pi2)
/// sum cos(2 pi k x)/k2</c> over a tooth x for a swing r (largest less smallest speed over the mean). Whole pitches average it
/// out; the part of a pitch does not: the share f of the time is a share <c>f + W(psi + f) - W(psi)</c> of the way, with the
/// amplitude
/// <c>A = 2 r/pi3</c> of the first harmonic of W and a phase psi that depends on how far the sprocket is from the first sensor.
/// All rollers pass the sensors at the same psi, so two sensors cannot tell it from elongation, however long they look; it stays
/// as an uncertainty, <c>sqrt(2) A |sin(pi f)|</c> pitches for an unknown psi. It is nothing when the distance is a whole number
/// of pitches, and falls with the number of pitches. Derivation: docs/signals.md.
/// </remarks>
public static class ChordalRipple
{
    /// <summary>
    /// The sprocket that is taken where nobody told its teeth: few enough to be on the safe side. Common practice.
    /// </summary>
    private const int TeethIfNotTold = 11;

    /// <summary>Amplitude of the first harmonic of the way over a tooth, in pitches.</summary>
    /// <param name="driverTeeth">Teeth of the sprocket that pulls; null when nobody told.</param>
    public static double Amplitude(int? driverTeeth) =>
        2 * Sprocket.SpeedVariationPercent(driverTeeth ?? TeethIfNotTold) / 100 / (Math.PI * Math.PI * Math.PI);

    /// <summary>Standard uncertainty of the number of pitches between the sensors, in pitches.</summary>
    /// <param name="driverTeeth">Teeth of the sprocket that pulls; null when nobody told.</param>
    /// <param name="fraction">Part of a pitch by which the distance exceeds a whole number of pitches.</param>
    public static double UncertaintyPitches(int? driverTeeth, double fraction) =>
        Math.Sqrt(2) * Amplitude(driverTeeth) * Math.Abs(Math.Sin(Math.PI * fraction));
}
