using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
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

    // What stopped the inbox of a plant east of Greenwich: a zero that a program wrote as a date.
    [Fact]
    public async Task A_date_that_cannot_be_is_refused_in_its_row_and_the_other_files_go_on()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Get<PlantSettings>().ChangeAsync(p => p.TimeZone = "Europe/Berlin", Ct);
        Drop(plant, "bad.csv", $"{A.ReadingsHeader}\nC1,0001-01-01,100,tape,,40,1020,mm,\n");
        Drop(plant, "good.csv", $"{A.ReadingsHeader}\n{A.Row()}\n");
        await LookTwiceAsync(plant);
        Assert.Contains(
            "0001-01-01' is no time of a chain", await File.ReadAllTextAsync(In(plant, "refused", "bad.csv.report.txt"), Ct),
            StringComparison.Ordinal);
        Assert.True(File.Exists(In(plant, "done", "good.csv")));
    }

    [Fact]
    public async Task A_wall_clock_time_that_the_spring_change_left_out_is_refused_with_what_to_write()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Get<PlantSettings>().ChangeAsync(p => p.TimeZone = "Europe/Berlin", Ct);
        var report = await plant.Import.ImportAsync([A.Readings(
            "C1,2025-10-26T02:30,100,tape,,40,1020,mm,", "C1,2026-03-29T02:30,2100,tape,,40,1020.4,mm,",
            "C1,2026-03-29T02:30+02:00,2100,tape,,40,1020.4,mm,")], null, Ct);
        Assert.Equal((2, 1), (report.Taken, report.Refused));
        Assert.Contains("clocks were put forward", report.Files[0].Remarks[0].Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_cannot_be_taken_in_at_all_is_set_aside_with_its_reason_and_the_others_go_on()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await using (var db = plant.Db())
        {
            await db.Database.ExecuteSqlRawAsync(
                db.Database.IsSqlite()
                ? "CREATE TRIGGER broken BEFORE INSERT ON Events BEGIN SELECT RAISE(ABORT, 'no room for events'); END"
                : """ALTER TABLE "Events" ADD CONSTRAINT "no room for events" CHECK (1 = 0) NOT VALID""", Ct);
        }

        Drop(plant, "events.csv", $"{A.EventsHeader}\nC1,oiling,2026-05-01,,\n");
        Drop(plant, "readings.csv", $"{A.ReadingsHeader}\n{A.Row()}\n");
        await LookTwiceAsync(plant);
        Assert.True(File.Exists(In(plant, "done", "readings.csv")));
        Assert.Contains(
            "no room for events", await File.ReadAllTextAsync(In(plant, "refused", "events.csv.report.txt"), Ct),
            StringComparison.Ordinal);
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
    public async Task A_new_file_at_every_look_holds_the_others_up_a_while_only()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var taken = 0;
        var looks = 0;
        while (taken == 0 && ++looks < 50)
        {
            Drop(plant, $"readings-{looks:00}.csv", $"{A.ReadingsHeader}\n{A.Row(counterH: looks)}\n");
            taken = await plant.Get<Inbox>().RunOnceAsync(Ct);
        }

        Assert.InRange(looks, 5, 20);
        Assert.Equal(looks - 1, taken); // the newest has been seen once only
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
