using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Intake;

public sealed class FileImportTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Files_in_any_order_are_taken_in_register_first()
    {
        await using var plant = await TestPlant.OpenAsync();
        var report = await plant.Import.ImportAsync(
            [A.Readings(A.Row()), A.Events("C1,oiling,2026-05-01,,"), A.File("chains.csv", "chain,pitch_mm\nC1,25.4\n")], null,
            Ct);
        Assert.Equal([FileKind.Chains, FileKind.Events, FileKind.Readings], report.Files.Select(f => f.Kind));
        Assert.Equal((3, 0, 0, 0), (report.Taken, report.AlreadyKnown, report.Waiting, report.Refused));
    }

    [Fact]
    public async Task The_same_files_twice_change_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        var files = A.Folder(A.Data("fleet"));
        var first = await plant.Import.ImportAsync(files, null, Ct);
        var before = await CountsAsync(plant);
        var second = await plant.Import.ImportAsync(files, null, Ct);
        Assert.Equal((60 + 1123 + 14, 0), (first.Taken + first.Waiting, first.Refused));
        Assert.Equal((0, 60 + 1123 + 14, 0, 0), (second.Taken, second.AlreadyKnown, second.Waiting, second.Refused));
        Assert.Equal(before, await CountsAsync(plant));
    }

    [Fact]
    public async Task A_longer_file_of_the_same_history_adds_only_what_is_new()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Import.ImportAsync([A.Readings(A.Row(counterH: 100), A.Row(counterH: 200))], null, Ct);
        var report = await plant.Import
            .ImportAsync([A.Readings(A.Row(counterH: 100), A.Row(counterH: 200), A.Row(counterH: 300))], null, Ct);
        Assert.Equal((1, 2, 0, 0), (report.Taken, report.AlreadyKnown, report.Waiting, report.Refused));
    }

    [Fact]
    public async Task Good_rows_are_taken_beside_bad_ones_which_are_named()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "fitted_counter_h=50");
        var report = await plant.Import.ImportAsync([A.Readings(
            A.Row(counterH: 40),                           // 2: before the fitting
            A.Row(counterH: 100),                          // 3: good
            A.Row(counterH: 100),                          // 4: the same again
            "nobody,,100,tape,,40,1020,mm,",               // 5: unknown chain
            "C1,,200,tape,,0,1020,mm,",                    // 6: no pitches
            "C1,,200,tape,,40,1200,mm,",                   // 7: 18 % longer
            "C1,,abc,tape,,40,1020,mm,",                   // 8: text
            A.Row(counterH: 95),                           // 9: runs backwards
            A.Row(counterH: 300))], null, Ct);             // 10: good
        var file = Assert.Single(report.Files);
        Assert.Equal((2, 1, 2, 4), (file.Taken, file.AlreadyKnown, file.Waiting, file.Refused));
        Assert.Equal(
            [
                (2, "counter_h", RemarkKind.Refused), (4, "", RemarkKind.Warning), (5, "chain", RemarkKind.Refused),
                    (6, "pitches", RemarkKind.Refused),
                (7, "length", RemarkKind.Waiting), (8, "counter_h", RemarkKind.Refused), (9, "counter_h", RemarkKind.Waiting),
            ],
            file.Remarks.Select(r => (r.Line, r.Column, r.Kind)));
        Assert.All(file.Remarks, r => Assert.StartsWith($"readings.csv:{r.Line}: ", r.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Waiting_rows_are_kept_and_do_not_count()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Import.ImportAsync([A.Readings("C1,,200,tape,,40,1200,mm,")], null, Ct);
        await using var db = plant.Db();
        var row = await db.Readings.SingleAsync(Ct);
        Assert.Equal(ReadingStanding.Waiting, row.Standing);
        Assert.Contains("Check the count", row.WhyWaiting.ToString(), StringComparison.Ordinal);
        Assert.Empty((await plant.Review.AssessAsync([id], Ct)).Single().Raw.Readings);
    }

    [Fact]
    public async Task A_recorded_reset_in_the_same_import_explains_a_fall()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var report = await plant.Import
            .ImportAsync([A.Readings(A.Row(counterH: 400), A.Row(counterH: 300)), A.Events("C1,meter_reset,,500,0")], null, Ct);
        Assert.Empty(report.Files.SelectMany(f => f.Remarks));
    }

    [Fact]
    public async Task A_preview_tells_the_same_and_stores_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        ImportFile[] files =
        [
            A.Readings(A.Row(counterH: 400), A.Row(counterH: 300), "C1,,500,tape,,40,1200,mm,", "x"),
                A.Events("C1,meter_reset,,500,0"),
            A.File("chains.csv", "chain,pitch_mm\nC1,25.4\n"),
        ];
        var preview = await plant.Import.PreviewAsync(files, null, Ct);
        Assert.Equal((0, 0, 0, 0), await CountsAsync(plant));
        var report = await plant.Import.ImportAsync(files, null, Ct);
        Assert.Equal(preview.Files.Select(Told), report.Files.Select(Told));
        Assert.Equal((4, 1, 1), (preview.Taken, preview.Waiting, preview.Refused));

        static string Told(FileReport f) =>
            $"{f.Kind} {f.Taken} {f.AlreadyKnown} {f.Waiting} {f.Refused} {string.Join('|', f.Remarks)}";
    }

    [Fact]
    public async Task A_chain_is_changed_by_its_name()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "line=L1 limit_pct=2.5");
        var report = await plant.Import
            .ImportAsync([A.File("chains.csv", "chain,pitch_mm,limit_pct\nC1,25.4,2\nC2,19.05,\nC2,19.05,\n")], null, Ct);
        await using var db = plant.Db();
        Assert.Equal([("C1", "L1", 2.0), ("C2", "", null)], (await db.Chains.OrderBy(c => c.Name).ToListAsync(Ct))
            .Select(c => (c.Name, c.Line, c.LimitPct)));
        Assert.Equal((2, 1, 4), (report.Taken, report.Refused, Assert.Single(report.Files[0].Remarks).Line));
    }

    [Fact]
    public async Task More_remarks_than_are_kept_are_counted()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var report = await plant.Import
            .ImportAsync([A.Readings([.. Enumerable.Range(0, 1500).Select(i => $"nobody,,{i},tape,,40,1020,mm,")])], null, Ct);
        Assert.Equal(
            (1500, 1500, FileReport.MostRemarks), (report.Refused, report.Files[0].RemarkCount, report.Files[0].Remarks.Count));
    }

    [Fact]
    public async Task What_became_of_a_file_is_kept_once()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var file = A.Readings(A.Row(), "x");
        for (var i = 0; i < 2; i++) await plant.Import.ImportAsync([file], null, Ct);
        await using var db = plant.Db();
        var kept = await db.Imports.Where(i => i.FileName == "readings.csv").ToListAsync(Ct);
        Assert.Equal((1, 1), (Assert.Single(kept).Taken, kept[0].Refused));
        Assert.Contains("readings.csv:3:", kept[0].Report.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Progress_is_told_up_to_the_end_of_each_file()
    {
        await using var plant = await TestPlant.OpenAsync();
        // Over many chains: the review after the import takes the longer, the more readings one chain has.
        await plant.Import.ImportAsync(
            [A.File("chains.csv", "chain,pitch_mm\n" + string.Concat(Enumerable.Range(0, 25).Select(i => $"C{i},25.4\n")))], null,
            Ct);
        var told = new Told();
        await plant.Import.ImportAsync(
            [A.Readings([.. Enumerable.Range(0, 9000).Select(i => A.Row($"C{i % 25}", counterH: i))])], told, Ct);
        Assert.Equal([4000, 8000, 9000], told.Heard.Select(p => p.Rows));
        Assert.Equal(1, told.Heard[^1].Share);
    }

    private static async Task<(int, int, int, int)> CountsAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        return (await db.Chains.CountAsync(Ct), await db.Readings.CountAsync(Ct), await db.Events.CountAsync(Ct),
            await db.Forecasts.CountAsync(Ct));
    }

    private sealed class Told : IProgress<ImportProgress>
    {
        public List<ImportProgress> Heard { get; } = [];

        public void Report(ImportProgress value) => Heard.Add(value);
    }
}
