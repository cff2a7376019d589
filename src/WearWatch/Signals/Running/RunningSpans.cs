using System.Runtime.InteropServices;
using WearWatch.Trends;

namespace WearWatch.Signals.Running;

/// <summary>Makes running hours of messages: from an hour counter, from a switch, from the pulses of a speed sensor.</summary>
/// <remarks>
/// No line runs longer than time goes by. That bound tells a counter that rolled over (then the hours from the old value to the
/// end of its figures and on to the new one fit into the time) from one that began again (then at least the new value was run),
/// and both from one that was set. Where nothing tells, the production calendar does, and the span says so. A counter has coarse
/// figures: one of whole hours jumps by an hour between two messages that are five minutes apart. So a rise is taken as it is
/// here, and the bound is held over the day (<see cref="RunningDay"/>); cut at each message it would lose most of the hours.
/// </remarks>
public static class RunningSpans
{
    /// <summary>A switch that is silent for longer may have changed unseen; it is to speak every 15 minutes.</summary>
    public static readonly TimeSpan LongestSilence = TimeSpan.FromMinutes(20);

    /// <summary>Counters may show whole hours only, and clocks differ.</summary>
    private const double CounterSlackH = 1.05;

    private static readonly double[] CounterEnds = [10_000, 100_000, 1_000_000];
    private static readonly double[] PulseEnds = [65_536, 4_294_967_296];

    /// <summary>Spans between the readings of an hour counter.</summary>
    /// <param name="signals">The counter by time, in hours.</param>
    /// <param name="planned">Planned running hours between two moments.</param>
    public static IEnumerable<RunningSpan> OfCounter(
        IReadOnlyList<RunningSignal> signals, Func<DateTimeOffset, DateTimeOffset, double> planned) =>
        Pairs(signals).Select(pair =>
        {
            var (a, b) = pair;
            var elapsed = (b.At - a.At).TotalHours;
            var risen = b.Value - a.Value;
            if (risen >= 0 && risen <= elapsed + CounterSlackH) return new RunningSpan(a.At, b.At, risen, RunningFinding.Plain);
            if (risen >= 0) return Span(planned(a.At, b.At), RunningFinding.Leap);
            foreach (var end in CounterEnds)
                if (a.Value < end && end + risen <= elapsed + CounterSlackH)
                    return new RunningSpan(a.At, b.At, end + risen, RunningFinding.RollOver);
            return b.Value <= elapsed + CounterSlackH
                ? Span(Math.Max(b.Value, planned(a.At, b.At)), RunningFinding.Reset)
                : Span(planned(a.At, b.At), RunningFinding.Leap);

            RunningSpan Span(double hours, RunningFinding finding) => new(a.At, b.At, Math.Min(hours, elapsed), finding);
        });

    /// <summary>Spans between the words of a switch.</summary>
    /// <param name="signals">1 from that moment on, or 0, by time.</param>
    /// <param name="planned">Planned running hours between two moments.</param>
    public static IEnumerable<RunningSpan> OfSwitch(
        IReadOnlyList<RunningSignal> signals, Func<DateTimeOffset, DateTimeOffset, double> planned) =>
        Pairs(signals).Select(pair => pair.B.At - pair.A.At > LongestSilence
            ? new RunningSpan(pair.A.At, pair.B.At, planned(pair.A.At, pair.B.At), RunningFinding.Gap)
            : new RunningSpan(
                pair.A.At, pair.B.At, pair.A.Value > 0 ? (pair.B.At - pair.A.At).TotalHours : 0, RunningFinding.Plain));

    /// <summary>Spans between the counts of a speed sensor's pulses.</summary>
    /// <remarks>
    /// A span with pulses between two others with pulses was run through, whatever the speed. At the edge of a stop, and over a
    /// silence, the time that the pulses take at the usual rate was run.
    /// </remarks>
    /// <param name="signals">The counts by time.</param>
    public static IEnumerable<RunningSpan> OfPulses(IReadOnlyList<RunningSignal> signals)
    {
        List<(RunningSignal A, RunningSignal B)> pairs = [.. Pairs(signals)];
        List<(double Pulses, RunningFinding Finding)> counted = [.. pairs.Select(Counted)];
        var rates = new List<double>();
        for (var i = 0; i < pairs.Count; i++)
            if (counted[i] is { Pulses: > 0, Finding: RunningFinding.Plain })
                rates.Add(counted[i].Pulses / (pairs[i].B.At - pairs[i].A.At).TotalHours);
        var usual = rates.Count > 0 ? Median.Of(CollectionsMarshal.AsSpan(rates)) : 0;
        for (var i = 0; i < pairs.Count; i++)
        {
            var (a, b) = pairs[i];
            var elapsed = (b.At - a.At).TotalHours;
            var amidst = i > 0 && i + 1 < pairs.Count && counted[i - 1].Pulses > 0 && counted[i + 1].Pulses > 0
                && b.At - a.At <= LongestSilence;
            var (pulses, finding) = counted[i];
            var hours = pulses <= 0 ? 0 : amidst || usual <= 0 ? elapsed : Math.Min(elapsed, pulses / usual);
            yield return new RunningSpan(a.At, b.At, hours, finding);
        }
    }

    /// <summary>
    /// Pulses between two counts: over the end of the figures when that is not more than since a new beginning could be.
    /// </summary>
    private static (double Pulses, RunningFinding Finding) Counted((RunningSignal A, RunningSignal B) pair)
    {
        var risen = pair.B.Value - pair.A.Value;
        if (risen >= 0) return (risen, RunningFinding.Plain);
        foreach (var end in PulseEnds)
            if (pair.A.Value < end && pair.A.Value > 0.9 * end) return (end + risen, RunningFinding.RollOver);
        return (pair.B.Value, RunningFinding.Reset);
    }

    private static IEnumerable<(RunningSignal A, RunningSignal B)> Pairs(IReadOnlyList<RunningSignal> signals)
    {
        for (var i = 0; i + 1 < signals.Count; i++)
            if (signals[i + 1].At > signals[i].At) yield return (signals[i], signals[i + 1]);
    }
}
