using WearWatch.Gauging;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Intake;

/// <summary>
/// Judges a reading before it is taken in: whether such a reading can be, given the chain and what was told of it before.
/// </summary>
/// <remarks>Whether it fits the trend is not asked here: the track weighs every reading by that, again and again.</remarks>
public static class ReadingJudge
{
    /// <summary>Judges a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="so">What is known of its chain.</param>
    /// <param name="now">The moment at which it is told.</param>
    /// <param name="askAboutFalls">
    /// Whether the person who told it can be asked about a counter that fell; else a fall to less than
    /// half, as after a reset that nobody recorded, is taken with a remark.
    /// </param>
    public static Judgement Judge(Reading reading, ChainSoFar so, DateTimeOffset now, bool askAboutFalls = false)
    {
        if (Clocks.FaultOf(reading.TakenAt, now) is { } time) return new Judgement.Refuse("taken_at", time);
        if (BeforeFitting(reading, so) is { } before) return before;
        var outcome = Gauge.Measure(so.Card.PitchMm, reading.Pitches, reading.LengthMm, reading.Tool, reading.TemperatureC);
        return outcome switch
        {
            GaugeOutcome.Refused refused => new Judgement.Refuse(refused.Field, refused.Reason),
            GaugeOutcome.Doubted doubted => new Judgement.Wait("length", doubted.Reason, ForPlanner: true),
            _ when reading.Strand > so.Card.Strands => new Judgement.Wait("strand",
                $"Strand {reading.Strand} was measured, and by the register {so.Card.Name} has {so.Card.Strands}. Correct one "
                + $"of them."),
            _ => Fall(reading, so, askAboutFalls),
        };
    }

    private static Judgement.Refuse? BeforeFitting(Reading reading, ChainSoFar so)
    {
        if (so.WasReplaced) return null;
        // A reading that tells only its day may carry an earlier hour of the day of fitting.
        if (reading.TakenAt is { } at && so.Card.FittedAt is { } fitted && at < fitted && fitted - at >= TimeSpan.FromDays(1))
            return new Judgement.Refuse("taken_at",
                $"Before the fitting of {so.Card.Name} on {fitted:yyyy-MM-dd}. If an earlier chain ran here, record the "
                + $"replacement first.");
        return so.LastCounterH is null
            && reading.Counter is { Hours: var h } && so.Card.FittedCounter is { Hours: var fittedH } && h < fittedH
            && !so.IsFallRecorded(fittedH, h)
                ? new Judgement.Refuse("counter_h",
                    $"{h:0.##} h is before the fitting of {so.Card.Name} at {fittedH:0.##} h. If the counter was reset or an "
                    + $"earlier chain ran here, record that first.")
                : null;
    }

    private static Judgement Fall(Reading reading, ChainSoFar so, bool askAboutFalls)
    {
        if (reading.Counter is not { Hours: var h } || so.LastCounterH is not { } last || h >= last) return new Judgement.Use();
        // A reading told late is put in its place by its date.
        if (reading.TakenAt < so.LastTakenAt || so.IsFallRecorded(last, h)) return new Judgement.Use();
        return askAboutFalls || h > last / 2
            ? new Judgement.Wait("counter_h",
                $"The counter runs backwards, from {last:0.##} to {h:0.##} h, and no reset is recorded. Check it, or record "
                + $"the reset.")
            : new Judgement.Use(
                "counter_h", $"The counter fell from {last:0.##} to {h:0.##} h and no reset is recorded: taken as a reset.");
    }
}
