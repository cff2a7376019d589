namespace WearWatch.SensorSim;

/// <summary>The mill running on after its history: what is measured and what happens, as fast as the caller lets time pass.</summary>
/// <remarks>
/// The same readings come however time is cut into stretches. Readings and events of a stretch belong together: a replacement
/// must arrive no later than the first reading of the new chain. Not safe for use by several threads at once.
/// </remarks>
/// <param name="mill">The mill; its history is the past of this live run, without gap or overlap.</param>
public sealed class MillLive(Mill mill)
{
    /// <summary>What is measured from one moment (included) to another (not included), in order of time.</summary>
    public IEnumerable<LiveReading> ReadingsBetween(DateTimeOffset from, DateTimeOffset to) => mill.Histories
        .SelectMany(history => history.Readings.Between(from, to))
        .OrderBy(reading => reading.Record.TakenAt);

    /// <summary>What is written down of replacements, oilings and the like in the same stretch, in order of time.</summary>
    public IEnumerable<MillEvent> EventsBetween(DateTimeOffset from, DateTimeOffset to) => mill.Histories
        .SelectMany(history => history.Events.Until(to))
        .Where(happened => happened.IsRecorded && happened.At >= from)
        .OrderBy(happened => happened.At);
}
