using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>
/// What a reading that cannot be may have been meant to be: a slipped decimal point, the other unit, a miscounted pitch.
/// </summary>
internal static class Corrections
{
    /// <summary>A correction is offered within so many standard deviations of what the track expects.</summary>
    private const double WithinDeviations = 3;

    /// <summary>The corrections that fit, likeliest first.</summary>
    public static IReadOnlyList<Phrase> For(ChainCard card, Reading reading, (double Percent, double Deviation) expected) =>
        [.. from candidate in Candidates(reading)
            let outcome = Gauge.Measure(card.PitchMm, candidate.Pitches, candidate.LengthMm, reading.Tool, reading.TemperatureC)
            where outcome is GaugeOutcome.Measured
            let elongation = ((GaugeOutcome.Measured)outcome).Elongation
            let deviation = Math.Sqrt(
                expected.Deviation * expected.Deviation + elongation.ScatterPercent * elongation.ScatterPercent)
            let off = Math.Abs(elongation.Percent - expected.Percent) / deviation
            where off <= WithinDeviations
            orderby off
            select Phrase.Of($"{candidate.Words}: {elongation.Percent:0.00} %")];

    private static IEnumerable<(Phrase Words, int Pitches, double LengthMm)> Candidates(Reading reading)
    {
        var (pitches, length) = (reading.Pitches, reading.LengthMm);
        yield return (Mm(length * 10, $"the decimal point slipped"), pitches, length * 10);
        yield return (Mm(length / 10, $"the decimal point slipped"), pitches, length / 10);
        yield return (Mm(length * 25.4, $"it was read in inches"), pitches, length * 25.4);
        yield return (Mm(length / 25.4, $"it was read in millimetres"), pitches, length / 25.4);
        foreach (var other in (int[])[pitches + 1, pitches - 1])
        {
            if (other > 0) yield return ($"{other} pitches instead of {pitches}", other, length);
        }
    }

    private static Phrase Mm(double length, Phrase why) =>
        $"{length:0.##} mm, {why}";
}
