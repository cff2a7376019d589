namespace WearWatch.Signals.Running;

/// <summary>What lies between two messages about running.</summary>
public enum RunningFinding
{
    /// <summary>Nothing out of the ordinary.</summary>
    Plain,

    /// <summary>Too long a silence to know: the hours are those of the calendar.</summary>
    Gap,

    /// <summary>The counter began again, as after a restart of the device or a new counter.</summary>
    Reset,

    /// <summary>The counter came to the end of its figures and went on from zero.</summary>
    RollOver,

    /// <summary>
    /// The counter rose by more than time went by: it was set, or another one is read. The hours are those of the calendar.
    /// </summary>
    Leap,
}

/// <summary>The time between two messages with the hours run in it.</summary>
/// <param name="From">The earlier message.</param>
/// <param name="To">The later message.</param>
/// <param name="Hours">
/// Running hours in between; by a counter they may be more than the time that went by, by as much as its figures are coarse.
/// </param>
/// <param name="Finding">What was found.</param>
public readonly record struct RunningSpan(DateTimeOffset From, DateTimeOffset To, double Hours, RunningFinding Finding);
