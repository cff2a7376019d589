using System.Globalization;
using WearWatch.Benchmarks.Entries;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Tests.Entries;

/// <summary>
/// A plant's first import with a gross slip of the length in rows that others come after: each waits with its question, and no
/// other row does for it. The shares over 1,000 of each slip are those of the benchmark <c>lengths</c>.
/// </summary>
public sealed class OlderRowTests : IDisposable
{
    private const int Slips = 60;
    private const int RowsAfter = 3;
    private const int RowsBefore = 4;
    private const int Seed = 5;

    private static readonly DateTimeOffset Now = new(2026, 6, 2, 10, 0, 0, TimeSpan.Zero);
    private static readonly string[] Names = ["chains.csv", "events.csv", "readings.csv"];

    private readonly string folder = Directory.CreateTempSubdirectory("wearwatch-older-rows-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_gross_slip_in_an_older_row_waits_and_lets_no_other_row_wait()
    {
        var mill = TrialFleet.Mill(folder, dated: true);
        await using var plant = await TestPlant.OpenAsync();
        plant.Clock.Advance(Now - plant.Clock.GetUtcNow());
        await plant.Get<PlantSettings>().ChangeAsync(
            row => (row.Utilisation, row.TimeZone) = (mill.Calendar.Utilisation, "UTC"), TestContext.Current.CancellationToken);
        FileSlips[] right = [.. Names.Select(n => FileSlips.Read(Path.Combine(folder, n), _ => true))];
        var before = await WaitingAsync(plant.Import, right);

        var chance = new Random(Seed);
        var told = right[2];
        var spoiled = new HashSet<int>();
        var taken = new HashSet<string>();
        while (spoiled.Count < Slips)
        {
            var row = chance.Next(told.Rows.Count);
            if (before.Contains(row) || !StandsAmid(told, row) || !taken.Add(told.Rows[row][0])) continue;
            told = told.With(row, Gross(told, row, chance.Next(4)));
            spoiled.Add(row);
        }

        var after = await WaitingAsync(plant.Import, [right[0], right[1], told]);
        Assert.True(after.Count(spoiled.Contains) >= 0.95 * Slips, $"{after.Count(spoiled.Contains)} of {Slips} wait.");
        Assert.Empty(after.Except(before).Except(spoiled));
        // Some rows of the mill are slips as they are.
        Assert.True(before.Count < 0.03 * told.Rows.Count, $"{before.Count} of {told.Rows.Count} wait as they are.");
    }

    private static bool StandsAmid(FileSlips readings, int row)
    {
        var chain = readings.Rows[row][0];
        bool IsOfChain(int i) => i >= 0 && i < readings.Rows.Count && readings.Rows[i][0] == chain;
        return IsOfChain(row - RowsBefore) && IsOfChain(row + RowsAfter);
    }

    /// <summary>A miscounted pitch, two digits swapped, one left out, or the point.</summary>
    private static string[] Gross(FileSlips readings, int row, int slip)
    {
        string[] told = [.. readings.Rows[row]];
        var (pitches, length) = (Array.IndexOf(readings.Columns, "pitches"), Array.IndexOf(readings.Columns, "length"));
        if (slip == 0) told[pitches] = $"{int.Parse(told[pitches], CultureInfo.InvariantCulture) + 1}";
        else if (slip == 1 && told[length] is [var first, var second, ..] && first != second)
            told[length] = $"{second}{first}{told[length][2..]}";
        else if (slip == 2) told[length] = told[length][1..];
        else told[length] = told[length].Replace(".", "", StringComparison.Ordinal) + "0";
        return told;
    }

    /// <summary>The rows of readings that wait, from 0.</summary>
    private static async Task<HashSet<int>> WaitingAsync(FileImport import, FileSlips[] files)
    {
        var report = await import.PreviewAsync([.. files.Select((f, i) => A.File(Names[i], f.Text))]);
        return [.. report.Files.Single(f => f.Name == Names[2]).Remarks.Where(r => r.Kind == RemarkKind.Waiting)
            .Select(r => r.Line - 2)];
    }
}
