using WearWatch.Chains;
using WearWatch.Running;

namespace WearWatch.Signals.Running;

/// <summary>
/// A counter read by a controller that rose by more than time went by, or began again, and of which nobody has said why.
/// </summary>
/// <remarks>
/// Its hours are not believed: the calendar stands in for them. But a person has to know, since the next reading of the meter
/// may be typed from that counter. A figure that came to its end and went on from zero is no jump.
/// </remarks>
/// <param name="Day">The beginning of the plant day in which it jumped last.</param>
public sealed record CounterJump(DateTimeOffset Day)
{
    /// <summary>So long somebody is asked about it. Common practice: a round comes by within it.</summary>
    public static readonly TimeSpan AskedFor = TimeSpan.FromDays(30);

    /// <summary>The last jump that still waits for a word; null when there is none.</summary>
    /// <param name="record">The running hours by signals.</param>
    /// <param name="events">What was recorded of the chain: a change of the counter or a fitting explains a jump before
    /// it.</param>
    /// <param name="now">The moment.</param>
    public static CounterJump? Of(RunningLog record, IReadOnlyList<ChainEvent> events, DateTimeOffset now)
    {
        var said = events.Where(e => e.Kind is ChainEventKind.MeterReset or ChainEventKind.Replacement && e.At is not null)
            .Max(e => e.At);
        var last = record.Stretches.LastOrDefault(s => s.IsJump && now - s.From < AskedFor && (said is null || said < s.From));
        return last.IsJump ? new CounterJump(last.From) : null;
    }
}
