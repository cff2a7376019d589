using WearWatch.Signals;

namespace WearWatch.Storage.Rows;

/// <summary>
/// A position's running hours of a plant day, concluded from signals. It is kept for ever and made anew while signals still come.
/// </summary>
public sealed class RunDayRow
{
    public int ChainId { get; init; }

    /// <summary>The plant day's beginning.</summary>
    public DateTimeOffset Day { get; init; }

    /// <summary>The beginning of the part of the day that signals tell of.</summary>
    public DateTimeOffset From { get; set; }

    public DateTimeOffset To { get; set; }

    public double Hours { get; set; }

    /// <summary>Hours of time for which the calendar stood in.</summary>
    public double GapHours { get; set; }

    /// <summary>How often a counter began again, rolled over or was set.</summary>
    public int Resets { get; set; }

    public TelemetryKind Source { get; set; }

    /// <summary>
    /// Whether an hour counter was set or began again: a roll-over costs no hours, so no calendar stands in for it.
    /// </summary>
    public bool CounterJumped => Source == TelemetryKind.RunningCounter && Resets > 0 && GapHours > 0;
}
