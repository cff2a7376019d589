using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Lubrication;

/// <summary>What a chain's hour counter shows now, from its last known count.</summary>
public static class HourCounter
{
    /// <summary>
    /// The last known count, carried on by the calendar from its date to now; the count itself when it has no date.
    /// </summary>
    /// <remarks>
    /// Of counts with a date the latest governs; without any date the last reading's, since readings stand in their order.
    /// </remarks>
    /// <param name="now">The moment for which it is asked.</param>
    /// <param name="readings">The chain's readings.</param>
    /// <param name="events">The chain's events.</param>
    /// <param name="calendar">When the line runs.</param>
    /// <returns>The expected count; null when none was ever told.</returns>
    public static RunningHours? At(
        DateTimeOffset now, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        var counts = readings.Select(r => (At: r.TakenAt, Count: r.Counter))
            .Concat(events.Select(e => (e.At, Count: e.CounterAfter ?? e.CounterBefore)))
            .Where(c => c.Count is not null && !(c.At > now))
            .Select(c => (c.At, Count: c.Count!.Value))
            .ToList();
        if (counts.Count == 0) return null;
        var dated = counts.Where(c => c.At is not null).ToList();
        if (dated.Count == 0) return readings.LastOrDefault(r => r.Counter is not null)?.Counter ?? counts[^1].Count;

        // Of several counts at one moment the one told last stands: the count after a reset.
        var (at, count) = dated.OrderBy(c => c.At).Last();
        return count + calendar.Between(at!.Value, now);
    }
}
