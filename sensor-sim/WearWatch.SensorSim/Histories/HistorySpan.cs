using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Histories;

/// <summary>The stretch of time over which the mill kept records, and its line's running hours at both ends.</summary>
internal sealed record HistorySpan(DateTimeOffset StartsAt, DateTimeOffset EndsAt, RunningTime Running)
{
    /// <summary>The line's running hours when the records begin.</summary>
    public double StartHour { get; } = Running.HoursAt(StartsAt);

    /// <summary>The line's running hours when the history ends.</summary>
    public double EndHour { get; } = Running.HoursAt(EndsAt);

    /// <summary>What the line runs in an ordinary week.</summary>
    public double HoursPerWeek => (EndHour - StartHour) / ((EndsAt - StartsAt).TotalDays / 7);
}
