using System.Text;
using WearWatch.SensorSim.Files;

namespace WearWatch.SensorSim;

/// <summary>How much a history holds.</summary>
/// <param name="Chains">Rows in <c>chains.csv</c>.</param>
/// <param name="Readings">Rows in <c>readings.csv</c>.</param>
/// <param name="Events">Rows in <c>events.csv</c>.</param>
public sealed record MillHistorySize(int Chains, int Readings, int Events);

/// <summary>The past of a fictional mill, as files that any plant could hand in.</summary>
/// <remarks>
/// <c>chains.csv</c>, <c>readings.csv</c> and <c>events.csv</c> are in the formats that WearWatch imports. Beside them stand
/// <c>truth.csv</c>, <c>truth_events.csv</c> and <c>truth_now.csv</c>, which no importer reads: what was true, for whoever
/// wants to judge a forecast.
/// </remarks>
public static class MillHistory
{
    /// <summary>Writes the history into a folder, which is made if it is not there; files of these names are replaced.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="endsAt">The moment at which the history ends.</param>
    /// <param name="seed">The seed. The same seed, end and years give the same bytes.</param>
    /// <param name="years">How many years the records reach back, 1 to 10.</param>
    public static MillHistorySize WriteTo(string folder, DateTimeOffset endsAt, int seed, int years = 3) =>
        WriteTo(folder, new Mill(endsAt, seed, years));

    /// <summary>Writes the history of a mill that may then run on in a <see cref="MillLive"/>.</summary>
    public static MillHistorySize WriteTo(string folder, Mill mill)
    {
        Directory.CreateDirectory(folder);
        List<LiveReading> readings = [.. mill.Histories.SelectMany(h => h.Readings.Between(mill.StartsAt, mill.EndsAt))];
        List<MillEvent> events = [.. mill.Histories.SelectMany(h => h.Events.Until(mill.EndsAt))];
        List<MillEvent> recorded = [.. events.Where(e => e.IsRecorded)];

        Write("chains.csv", writer => ChainsFile.Write(writer, mill.Histories));
        Write("readings.csv", writer => ReadingsFile.Write(writer, readings.Select(r => r.Record)));
        Write("events.csv", writer => EventsFile.Write(writer, recorded));
        Write("truth.csv", writer => TruthFiles.WriteReadings(writer, readings));
        Write("truth_events.csv", writer => TruthFiles.WriteEvents(writer, events));
        Write("truth_now.csv", writer => TruthFiles.WriteNow(writer, mill.Histories));
        return new MillHistorySize(mill.Histories.Count, readings.Count, recorded.Count);

        void Write(string name, Action<TextWriter> write)
        {
            using var writer = new StreamWriter(Path.Combine(folder, name), append: false, new UTF8Encoding(false));
            write(writer);
        }
    }
}
