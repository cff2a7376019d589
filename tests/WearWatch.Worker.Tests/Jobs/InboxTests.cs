using Microsoft.EntityFrameworkCore;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Tests.Jobs;

public sealed class InboxTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_file_is_taken_in_at_the_second_look_and_moved_to_done_with_its_report()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Drop(plant, "readings.csv", $"{A.ReadingsHeader}\n{A.Row()}\n");
        Assert.Equal(0, await plant.Get<Inbox>().RunOnceAsync(Ct));
        Assert.Equal(1, await plant.Get<Inbox>().RunOnceAsync(Ct));
        Assert.False(File.Exists(In(plant, "readings.csv")));
        Assert.True(File.Exists(In(plant, "done", "readings.csv")));
        Assert.Contains(
            "1 new", await File.ReadAllTextAsync(In(plant, "done", "readings.csv.report.txt"), Ct), StringComparison.Ordinal);
        await using var db = plant.Db();
        Assert.Equal(1, await db.Readings.CountAsync(Ct));
    }

    [Fact]
    public async Task A_file_with_refused_rows_goes_to_refused_and_its_good_rows_are_taken()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Drop(plant, "march.csv", $"{A.ReadingsHeader}\n{A.Row()}\nC1,,200,tape,,0,1020,mm,\n");
        await LookTwiceAsync(plant);
        var report = await File.ReadAllTextAsync(In(plant, "refused", "march.csv.report.txt"), Ct);
        Assert.Contains("refused: march.csv:3: pitches: ", report, StringComparison.Ordinal);
        Assert.Contains("1 new, 0 already known, 0 waiting for a person, 1 refused", report, StringComparison.Ordinal);
        Assert.Contains(plant.Log.Lines, line => line.Text.Contains("march.csv has 1 refused rows", StringComparison.Ordinal));
        await using var db = plant.Db();
        Assert.Equal(1, await db.Readings.CountAsync(Ct));
    }

    [Fact]
    public async Task Files_dropped_together_are_taken_in_register_first()
    {
        await using var plant = await TestPlant.OpenAsync();
        Drop(plant, "a-readings.csv", $"{A.ReadingsHeader}\n{A.Row()}\n");
        Drop(plant, "z-chains.csv", "chain,pitch_mm\nC1,25.4\n");
        await LookTwiceAsync(plant);
        Assert.Equal(["a-readings.csv", "z-chains.csv"], Directory.GetFiles(In(plant, "done"), "*.csv")
            .Select(f => Path.GetFileName(f)!).Order());
    }

    [Fact]
    public async Task A_file_that_grows_is_left_alone_and_the_others_wait_for_it_a_while()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Drop(plant, "readings.csv", $"{A.ReadingsHeader}\n{A.Row()}\n");
        Drop(plant, "growing.csv", $"{A.ReadingsHeader}\n");
        var taken = 0;
        var looks = 0;
        while (taken == 0 && ++looks < 50)
        {
            await File.AppendAllTextAsync(In(plant, "growing.csv"), A.Row(counterH: 1000 + looks) + "\n", Ct);
            taken = await plant.Get<Inbox>().RunOnceAsync(Ct);
        }

        Assert.InRange(looks, 5, 20);
        Assert.True(File.Exists(In(plant, "growing.csv")));
        Assert.True(File.Exists(In(plant, "done", "readings.csv")));
    }

    [Fact]
    public async Task A_file_that_somebody_writes_to_is_left_alone()
    {
        await using var plant = await TestPlant.OpenAsync();
        Drop(plant, "chains.csv", "chain,pitch_mm\nC1,25.4\n");
        await using (new FileStream(In(plant, "chains.csv"), FileMode.Open, FileAccess.Write, FileShare.None))
        {
            await LookTwiceAsync(plant);
            Assert.True(File.Exists(In(plant, "chains.csv")));
        }

        Assert.Equal(1, await plant.Get<Inbox>().RunOnceAsync(Ct));
    }

    [Fact]
    public async Task A_name_that_was_there_before_gets_the_time_so_that_nothing_is_overwritten()
    {
        await using var plant = await TestPlant.OpenAsync();
        for (var i = 0; i < 3; i++)
        {
            Drop(plant, "chains.csv", $"chain,pitch_mm\nC{i},25.4\n");
            await LookTwiceAsync(plant);
        }

        Assert.Equal(3, Directory.GetFiles(In(plant, "done"), "*.csv").Length);
        Assert.Contains(In(plant, "done", "chains.20260601T100000Z.csv"), Directory.GetFiles(In(plant, "done")));
    }

    [Fact]
    public async Task Only_csv_files_are_looked_at()
    {
        await using var plant = await TestPlant.OpenAsync();
        Drop(plant, "chains.csv.part", "chain,pitch_mm\nC1,25.4\n");
        Drop(plant, ".hidden.csv", "chain,pitch_mm\nC1,25.4\n");
        await LookTwiceAsync(plant);
        Assert.Equal(2, Directory.GetFiles(plant.Folder.Inbox).Length);
    }

    [Fact]
    public async Task What_is_no_file_of_ours_goes_to_refused()
    {
        await using var plant = await TestPlant.OpenAsync();
        await File.WriteAllBytesAsync(In(plant, "sheet.csv"), [0x50, 0x4B, 0x03, 0x04, 0, 0], Ct);
        await LookTwiceAsync(plant);
        Assert.Contains("spreadsheet", await File.ReadAllTextAsync(In(plant, "refused", "sheet.csv.report.txt"), Ct),
            StringComparison.Ordinal);
    }

    private static async Task LookTwiceAsync(TestPlant plant)
    {
        await plant.Get<Inbox>().RunOnceAsync(Ct);
        await plant.Get<Inbox>().RunOnceAsync(Ct);
    }

    private static void Drop(TestPlant plant, string name, string text) => File.WriteAllText(In(plant, name), text);

    private static string In(TestPlant plant, params string[] path) => Path.Combine([plant.Folder.Inbox, .. path]);
}
