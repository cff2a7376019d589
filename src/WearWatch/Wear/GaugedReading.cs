using System.Diagnostics;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>A reading through the gauge: an elongation that a chain can have, or the reason why there is none.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Elongation">The elongation; null when the reading is held back.</param>
/// <param name="WhyNot">Why it is held back; null when it is not.</param>
internal readonly record struct GaugedReading(Reading Reading, Elongation? Elongation, Phrase? WhyNot)
{
    /// <summary>Gauges a chain's readings, in their order.</summary>
    public static IReadOnlyList<GaugedReading> All(ChainCard card, IReadOnlyList<Reading> readings)
    {
        var seen = new HashSet<Reading>();
        return [.. readings.Select(r =>
            seen.Add(r) ? Of(card, r) : new(r, null, $"The same reading is there already: entered twice?"))];
    }

    private static GaugedReading Of(ChainCard card, Reading reading) =>
        Gauge.Measure(card.PitchMm, reading.Pitches, reading.LengthMm, reading.Tool, reading.TemperatureC,
            reading.LengthUncertaintyMm) switch
        {
            GaugeOutcome.Measured { Elongation: var e } when Plausible.Holds(e.Percent) => new(reading, e, null),
            GaugeOutcome.Measured { Elongation: var e } => new(reading, null, Plausible.WhyNot(e.Percent)),
            GaugeOutcome.Doubted doubted => new(reading, null, doubted.Reason),
            GaugeOutcome.Refused refused => new(reading, null, refused.Reason),
            var other => throw new UnreachableException(other.ToString()),
        };
}
