namespace WearWatch.Signals.Running;

/// <summary>The running hours of a position in a day, or of the part of it that signals tell of.</summary>
/// <param name="From">The beginning of what is told.</param>
/// <param name="To">Its end.</param>
/// <param name="Hours">Running hours in it.</param>
/// <param name="GapHours">Hours of time in it for which the calendar had to stand in.</param>
/// <param name="Resets">How often a counter began again, rolled over or was set.</param>
/// <param name="Source">What told them.</param>
public sealed record RunningDay(
    DateTimeOffset From, DateTimeOffset To, double Hours, double GapHours, int Resets, TelemetryKind Source)
{
    /// <summary>
    /// The day by the best of its sources: an hour counter before a switch, a switch before pulses; null when none tells.
    /// </summary>
    /// <param name="signals">The messages by kind, each by time, with some from before and after the day.</param>
    /// <param name="start">The day's beginning.</param>
    /// <param name="end">The day's end.</param>
    /// <param name="planned">Planned running hours between two moments.</param>
    public static RunningDay? Of(
        ILookup<TelemetryKind, RunningSignal> signals, DateTimeOffset start, DateTimeOffset end,
        Func<DateTimeOffset, DateTimeOffset, double> planned) =>
        Day(TelemetryKind.RunningCounter, RunningSpans.OfCounter([.. signals[TelemetryKind.RunningCounter]], planned), start, end)
        ?? Day(TelemetryKind.RunningSwitch, RunningSpans.OfSwitch([.. signals[TelemetryKind.RunningSwitch]], planned), start, end)
        ?? Day(TelemetryKind.RunningPulses, RunningSpans.OfPulses([.. signals[TelemetryKind.RunningPulses]]), start, end);

    private static RunningDay? Day(TelemetryKind source, IEnumerable<RunningSpan> spans, DateTimeOffset start, DateTimeOffset end)
    {
        var (hours, told, gaps, resets) = (0.0, 0.0, 0.0, 0);
        DateTimeOffset? first = null;
        var last = start;
        foreach (var span in spans)
        {
            var (from, to) = (span.From > start ? span.From : start, span.To < end ? span.To : end);
            if (to <= from) continue;
            first ??= from;
            last = to;
            told += (to - from).TotalHours;
            hours += span.Hours * ((to - from) / (span.To - span.From));
            if (span.Finding is RunningFinding.Gap or RunningFinding.Leap or RunningFinding.Reset) gaps += (to - from).TotalHours;
            if (span.Finding is RunningFinding.Reset or RunningFinding.RollOver or RunningFinding.Leap) resets++;
        }

        return first is { } begun ? new RunningDay(begun, last, Math.Min(hours, told), gaps, resets, source) : null;
    }
}
