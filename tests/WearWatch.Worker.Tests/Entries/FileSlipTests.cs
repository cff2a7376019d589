using WearWatch.Benchmarks.Entries;
using WearWatch.Entries;
using WearWatch.Plant.Folders;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Entries;

/// <summary>
/// A plant's first import with a slip in any field of any row of readings or events: whoever imports is asked about it, or the
/// early date stays. The columns are those of the files, so that a new one is tried by itself.
/// </summary>
public sealed class FileSlipTests : IDisposable
{
    private const int Slips = 60;
    private const int ChainsAtOnce = 4;
    private const int SlipsOfThem = 15;
    private const int Seed = 3;
    private const double MostDays = 90;
    private const double OutOfSightDays = 50 * 365.25;

    /// <summary>Within two standard deviations a length is as good as any other.</summary>
    private const double Ordinary = 2;

    private static readonly DateTimeOffset Now = new(2026, 6, 2, 10, 0, 0, TimeSpan.Zero);
    private static readonly string[] Names = ["chains.csv", "events.csv", "readings.csv"];

    private readonly string folder = Directory.CreateTempSubdirectory("wearwatch-file-slips-").FullName;
    private readonly List<string> moved = [];
    private ProductionCalendar calendar = ProductionCalendar.AlwaysRunning;
    private int made;
    private int asked;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task No_slip_in_any_field_of_a_first_import_moves_an_early_date_by_more_than_90_days_unasked()
    {
        calendar = TrialFleet.Mill(folder, dated: true).Calendar;
        await using var plant = await TestPlant.OpenAsync();
        plant.Clock.Advance(Now - plant.Clock.GetUtcNow());
        await plant.Get<PlantSettings>().ChangeAsync(row => (row.Utilisation, row.TimeZone, row.Holidays) = (
            calendar.Utilisation, "UTC", ShiftPlan.Text(MillHolidays())), TestContext.Current.CancellationToken);
        var chance = new Random(Seed);
        var lines = File.ReadLines(Path.Combine(folder, Names[0])).Skip(1).Select(l => l.Split(',')[1]).Distinct().ToList();
        while (made < Slips) await TryAsync(plant.Import, lines[chance.Next(lines.Count)], chance);

        Assert.True(moved.Count == 0, $"{moved.Count} of {made}, {asked} asked about:\n{string.Join('\n', moved)}");
        Assert.True(asked > Slips / 4, $"{asked} of {made} asked about.");
    }

    private static IEnumerable<DateOnly> MillHolidays() => SensorSim.MillCalendar.ShutdownDays(
        DateOnly.FromDateTime(Now.UtcDateTime).AddYears(-3), DateOnly.FromDateTime(Now.UtcDateTime));

    /// <summary>Some slips in the rows of some chains on one line of the mill.</summary>
    private async Task TryAsync(FileImport import, string line, Random chance)
    {
        var chains = FileSlips.Read(Path.Combine(folder, Names[0]), row => row[1] == line);
        var first = chance.Next(chains.Rows.Count - ChainsAtOnce);
        chains = chains with { Rows = [.. chains.Rows.Skip(first).Take(ChainsAtOnce)] };
        var names = chains.Rows.Select(r => r[0]).ToHashSet();
        FileSlips[] right =
        [
            chains, .. Names.Skip(1).Select(n => FileSlips.Read(Path.Combine(folder, n), row => names.Contains(row[0]))),
        ];
        var before = await TakeAsync(import, right);
        for (var tries = 0; tries < SlipsOfThem; tries++)
        {
            var (file, told) = (1 + chance.Next(2), right);
            var (row, column) = (chance.Next(right[file].Rows.Count), chance.Next(right[file].Columns.Length));
            // What happened, and at which chain, is what an event says.
            if (file == 1 && column < 2) continue;
            if (right[file].Spoil(row, column, chance) is not { } spoiled) continue;
            made++;
            told = [.. right.Select((f, i) => i == file ? f.With(row, spoiled) : f)];
            var after = await TakeAsync(import, told);
            if (after.Remarks.Except(before.Remarks).Any())
            {
                asked++;
                continue;
            }

            foreach (var chain in (string[])[right[file].Rows[row][0], spoiled[0]])
            {
                var days = Math.Abs(EarlyDays(after.Chains, chain) - EarlyDays(before.Chains, chain));
                if (days > MostDays && (file == 1 || IsUnusual(after.Chains, chain, before.Chains)))
                    moved.Add($"{days:0} days: {string.Join(',', right[file].Rows[row])} told {string.Join(',', spoiled)}");
            }
        }
    }

    /// <summary>What is said of the rows, and the chains as their rows leave them that are neither refused nor wait.</summary>
    private async Task<(HashSet<string> Remarks, FleetFolder Chains)> TakeAsync(FileImport import, FileSlips[] files)
    {
        var report = await import.PreviewAsync([.. files.Select((f, i) => A.File(Names[i], f.Text))]);
        var used = Directory.CreateDirectory(Path.Combine(folder, "used")).FullName;
        for (var i = 0; i < Names.Length; i++)
        {
            var remarks = report.Files.SingleOrDefault(f => f.Name == Names[i])?.Remarks ?? [];
            var left = remarks.Where(r => r.Kind != RemarkKind.Warning).Select(r => r.Line).ToHashSet();
            await File.WriteAllTextAsync(Path.Combine(used, Names[i]), files[i].Without(left).Text);
        }

        return ([.. report.Files.SelectMany(f => f.Remarks).Select(r => $"{r.File} {r.Line} {r.Column} {r.Kind}")],
            FleetFolder.Read(used, Now));
    }

    private double EarlyDays(FleetFolder chains, string name)
    {
        var chain = chains.Find(name)!;
        var early = Assessment.Of(chain.Card, chain.Readings, chain.Events, WearPrior.Broad, calendar, Now)
            .DateAt(5, calendar, Now);
        return early is { } date ? (date - Now).TotalDays : OutOfSightDays;
    }

    /// <summary>Whether the length of the one reading that is another is told from an ordinary one.</summary>
    private bool IsUnusual(FleetFolder chains, string name, FleetFolder right)
    {
        var (told, meant) = (chains.Find(name)!, right.Find(name)!.Readings);
        var at = told.Readings.Except(meant).Select(r => told.Readings.ToList().IndexOf(r)).FirstOrDefault(-1);
        return at < 0 || new KnownChain(told.Card, [.. told.Readings.Take(at)], told.Events, WearPrior.Broad, calendar)
            .Weigh(told.Readings[at]) is not { } doubt || Math.Abs(doubt.Deviations) > Ordinary;
    }
}
