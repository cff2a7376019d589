using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Signals.Passes;

/// <summary>What the uncertainty of a day of passes is made of.</summary>
internal static class PassBudget
{
    private static readonly Phrase CommonPractice = $"common practice";

    /// <summary>
    /// The chain's temperature is known within so many kelvin, that of the frame that holds the sensors within so many.
    /// </summary>
    private const double ChainKelvin = 2;

    private const double FrameKelvin = 5;

    /// <summary>The components, in percent of elongation.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="pitches">Pitches between the sensors.</param>
    /// <param name="scatterPitches">Standard uncertainty by the bursts' scatter, in pitches.</param>
    /// <param name="timingPitches">Standard uncertainty by clocks and delay of the channels, in pitches.</param>
    /// <param name="elongationPercent">The elongation.</param>
    public static IReadOnlyList<UncertaintyComponent> Of(
        SensorPair pair, double pitches, double scatterPitches, double timingPitches, double elongationPercent)
    {
        var percentPerPitch = (100 + elongationPercent) / pitches;
        var kelvin = Math.Sqrt((ChainKelvin * ChainKelvin + FrameKelvin * FrameKelvin) / 3);
        return
        [
            new($"scatter of the bursts", percentPerPitch * scatterPitches, true, $"the day's bursts"),
            new($"distance of the sensors", 100 * pair.DistanceUncertaintyMm / pair.DistanceMm, false,
                $"stated when it was measured"),
            new($"speed ripple", percentPerPitch * ChordalRipple.UncertaintyPitches(pair.DriverTeeth, pitches), false,
                $"geometry, docs/signals.md"),
            new($"clocks and delay of the channels", percentPerPitch * timingPitches, true,
                $"the day's bursts; channels of one device, " + $"{CommonPractice}"),
            new($"temperature", 100 * Gauge.SteelExpansionPerKelvin * kelvin, true,
                $"chain within {ChainKelvin} K, frame within {FrameKelvin} K, {CommonPractice}"),
        ];
    }
}
