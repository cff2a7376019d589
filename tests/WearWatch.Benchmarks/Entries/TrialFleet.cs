using System.Globalization;
using WearWatch.Plant.Folders;
using WearWatch.Running;
using WearWatch.SensorSim;

namespace WearWatch.Benchmarks.Entries;

/// <summary>
/// A fleet whose entries are spoiled one by one: its chains, when it runs, and which readings are slips already.
/// </summary>
/// <param name="Chains">The chains with their readings in order and their events.</param>
/// <param name="Calendar">When it runs.</param>
/// <param name="IsSlip">Whether a reading, by chain and index, is known to be a slip.</param>
public sealed record TrialFleet(
    IReadOnlyList<TrialChain> Chains, ProductionCalendar Calendar, Func<string, int, bool> IsSlip)
{
    /// <summary>Whether its readings have dates.</summary>
    public bool IsDated => Chains[0].IsDated;

    private static readonly DateTimeOffset EndsAt = new(2026, 6, 1, 10, 0, 0, TimeSpan.Zero);

    /// <summary>The mill of the demonstration, with its dates, or without them.</summary>
    /// <param name="folder">An empty folder to write its files into.</param>
    /// <param name="dated">Whether its readings keep their dates.</param>
    public static TrialFleet Mill(string folder, bool dated)
    {
        if (!File.Exists(Path.Combine(folder, "readings.csv"))) MillHistory.WriteTo(folder, EndsAt, seed: 7);
        var fleet = FleetFolder.Read(folder, EndsAt.AddDays(1));
        var truth = File.ReadLines(Path.Combine(folder, "truth", "readings.csv")).Skip(1).Select(line => line.Split(','))
            .GroupBy(row => row[0])
            .ToDictionary(g => g.Key, g => g.Select(row => row[^1] != "None" || row[^2] != "None").ToArray());
        var today = DateOnly.FromDateTime(EndsAt.UtcDateTime);
        var calendar = new ProductionCalendar([], Math.Round(MillCalendar.Utilisation, 2), TimeZoneInfo.Utc,
            MillCalendar.ShutdownDays(today.AddYears(-3), today));
        return new([.. fleet.Chains.Select(c => new TrialChain(c.Card, c.Readings, c.Events, dated))], calendar,
            (chain, index) => truth[chain][index]);
    }

    /// <summary>
    /// A folder of files, in which nothing tells dates; the slips in it are known where its truth lies beside it.
    /// </summary>
    public static TrialFleet Folder(string folder)
    {
        var truth = Path.Combine(folder, "truth_measurements.csv");
        var slips = !File.Exists(truth) ? []
            : File.ReadLines(truth).Skip(1).Select(line => line.Split(','))
                .Where(row => row[4].Length > 0)
                .Select(row => (row[0], int.Parse(row[1], CultureInfo.InvariantCulture) - 1)).ToHashSet();
        return new(
            [.. FleetFolder.Read(folder, EndsAt).Chains.Select(c => new TrialChain(c.Card, c.Readings, c.Events, dated: false))],
            ProductionCalendar.AlwaysRunning, (chain, index) => slips.Contains((chain, index)));
    }

    /// <summary>
    /// Runs a trial on each of some folders, or on the mill with dates and without; whether it came well out of each.
    /// </summary>
    public static bool Each(IReadOnlyList<string> folders, Func<TrialFleet, string, bool> run)
    {
        // All run, so that the table is whole also where a bar is missed.
        if (folders.Count > 0) return folders.Select(f => run(Folder(f), Path.GetFileName(f))).ToList().TrueForAll(kept => kept);
        var mill = Directory.CreateTempSubdirectory("wearwatch-mill-").FullName;
        try
        {
            return run(Mill(mill, dated: true), "with dates") & run(Mill(mill, dated: false), "without dates");
        }
        finally
        {
            Directory.Delete(mill, recursive: true);
        }
    }
}
