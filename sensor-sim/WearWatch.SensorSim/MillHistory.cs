using WearWatch.SensorSim.Files;

namespace WearWatch.SensorSim;

/// <summary>How much a history holds.</summary>
/// <param name="Chains">Rows in <c>chains.csv</c>.</param>
/// <param name="Readings">Rows in <c>readings.csv</c>.</param>
/// <param name="Events">Rows in <c>events.csv</c>.</param>
public sealed record MillHistorySize(int Chains, int Readings, int Events);

/// <summary>The past of a fictional mill, as files that any plant could hand in.</summary>
/// <remarks>
/// <c>chains.csv</c>, <c>readings.csv</c> and <c>events.csv</c> are in the formats that WearWatch imports. What was true stands
/// in a folder <c>truth</c> of its own, where no importer stumbles over it, for whoever wants to judge a forecast:
/// <c>readings.csv</c> (row by row as the readings), <c>events.csv</c> (replacements with their lots, exchanged counters,
/// recorded or not) and <c>chains.csv</c> (how it stands with each chain at the end).
/// </remarks>
public static class MillHistory
{
    /// <summary>How far the records reach back unless told otherwise.</summary>
    public const int DefaultYears = 3;

    private const string TruthFolder = "truth";

    /// <summary>Writes the history into a folder, which is made if it is not there; files of these names are replaced.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="endsAt">The moment at which the history ends.</param>
    /// <param name="seed">The seed. The same seed, end and years give the same bytes.</param>
    /// <param name="years">How many years the records reach back, 1 to 10.</param>
    public static MillHistorySize WriteTo(string folder, DateTimeOffset endsAt, int seed, int years = DefaultYears) =>
        WriteTo(folder, new Mill(endsAt, seed, years));

    /// <summary>Writes the history of a mill.</summary>
    public static MillHistorySize WriteTo(string folder, Mill mill)
    {
        Directory.CreateDirectory(Path.Combine(folder, TruthFolder));
        List<LiveReading> readings = [.. mill.Histories.SelectMany(h => h.Readings.Between(mill.StartsAt, mill.EndsAt))];
        List<MillEvent> events = [.. mill.Histories.SelectMany(h => h.Events.Until(mill.EndsAt))];
        List<MillEvent> recorded = [.. events.Where(e => e.IsRecorded)];

        Write("chains.csv", writer => ChainsFile.Write(writer, mill.Histories));
        Write("readings.csv", writer => ReadingsFile.Write(writer, readings.Select(r => r.Record)));
        Write("events.csv", writer => EventsFile.Write(writer, recorded));
        Write(Path.Combine(TruthFolder, "readings.csv"), writer => TruthFiles.WriteReadings(writer, readings));
        Write(Path.Combine(TruthFolder, "events.csv"), writer => TruthFiles.WriteEvents(writer, events));
        Write(Path.Combine(TruthFolder, "chains.csv"), writer => TruthFiles.WriteChains(writer, mill.Histories));
        return new MillHistorySize(mill.Histories.Count, readings.Count, recorded.Count);

        void Write(string name, Action<TextWriter> write) => PlainFile.Write(Path.Combine(folder, name), write);
    }
}
