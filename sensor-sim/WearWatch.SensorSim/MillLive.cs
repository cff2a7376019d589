using System.Globalization;
using WearWatch.SensorSim.Files;

namespace WearWatch.SensorSim;

/// <summary>The mill running on after its history, as fast as the caller lets time pass.</summary>
/// <remarks>
/// The same readings come however time is cut into stretches. Readings and events of a stretch belong together: a
/// replacement must arrive no later than the first reading of the new chain. Not safe for use by several threads at once.
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

    /// <summary>Drops what happened and was measured in a stretch of time into a watched folder, as CSV files.</summary>
    /// <remarks>
    /// Events first, since a reading after a replacement is of another chain. A file appears under its name only when it is
    /// whole. A stretch in which nothing happened leaves no file.
    /// </remarks>
    /// <returns>The paths of the files.</returns>
    public IReadOnlyList<string> DropInto(string inbox, DateTimeOffset from, DateTimeOffset to)
    {
        Directory.CreateDirectory(inbox);
        List<MillEvent> events = [.. EventsBetween(from, to)];
        List<ReadingRecord> readings = [.. ReadingsBetween(from, to).Select(r => r.Record)];
        var stretch = string.Create(
            CultureInfo.InvariantCulture, $"{from.UtcDateTime:yyyyMMdd'T'HHmmss}-{to.UtcDateTime:yyyyMMdd'T'HHmmss}");
        List<string> paths = [];
        if (events.Count > 0) Drop($"events-{stretch}.csv", writer => EventsFile.Write(writer, events));
        if (readings.Count > 0) Drop($"readings-{stretch}.csv", writer => ReadingsFile.Write(writer, readings));
        return paths;

        void Drop(string name, Action<TextWriter> write)
        {
            var path = Path.Combine(inbox, name);
            PlainFile.Write(path + ".part", write);
            File.Move(path + ".part", path, overwrite: true);
            paths.Add(path);
        }
    }
}
