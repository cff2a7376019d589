using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Intake;

public sealed class FileExportTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_exported_and_imported_elsewhere_gives_the_same_rows_and_the_same_forecasts_bit_for_bit()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync(A.Folder(A.Data("fleet")), null, Ct);
        await plant.Desk.TakeReadingAsync(A.Reading("C000", counterH: 18_700, length: "10,68", unit: Units.LengthUnit.Inch,
            pitches: 14, takenAt: TestPlant.Start.AddHours(-3)), Ct);
        await plant.Models.TrainAsync(Ct);
        await plant.Review.ReviewAsync(null, null, Ct);
        var folder = Path.Combine(plant.Folder.Root, "export");
        await plant.Get<FileExport>().WriteAsync(folder, Ct);

        await using var other = await TestPlant.OpenAsync();
        var report = await other.Import.ImportAsync(A.Folder(folder), null, Ct);
        await other.Models.TrainAsync(Ct);
        await other.Review.ReviewAsync(null, null, Ct);
        Assert.DoesNotContain(report.Files.SelectMany(f => f.Remarks), r => r.Kind == RemarkKind.Refused);
        Assert.Equal(await RowsAsync(plant), await RowsAsync(other));
        var (here, there) = (await ForecastsAsync(plant), await ForecastsAsync(other));
        Assert.Equal(60, here.Count);
        Assert.Equal(here.Keys, there.Keys);
        Assert.All(here.Keys, name => Assert.Equal(here[name].PercentilesH, there[name].PercentilesH));
        Assert.All(here.Keys, name => Assert.Equal(here[name].ModelVersion, there[name].ModelVersion));
        Assert.NotEqual("broad prior", here["C000"].ModelVersion);
    }

    [Fact]
    public async Task An_export_imported_into_its_own_plant_changes_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "sprocket_teeth=17/75 lifts=yes");
        var wrong = Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.TakeReadingAsync(A.Reading(length: "40 1/8", unit: Units.LengthUnit.Inch), Ct));
        await plant.Desk.CorrectAsync(wrong.Id, A.Reading(length: "40 3/16", unit: Units.LengthUnit.Inch), Ct);
        await plant.Desk.TakeEventAsync(A.Event(at: TestPlant.Start.AddDays(-1)), Ct);
        var folder = Path.Combine(plant.Folder.Root, "export");
        Assert.Equal((1, 1, 1), await plant.Get<FileExport>().WriteAsync(folder, Ct));
        var report = await plant.Import.ImportAsync(A.Folder(folder), null, Ct);
        Assert.Equal((0, 3, 0, 0), (report.Taken, report.AlreadyKnown, report.Waiting, report.Refused));
    }

    [Fact]
    public async Task The_lots_of_fitted_chains_survive_a_file()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "lot=A-1");
        await plant.Desk.TakeEventAsync(
            A.Event(kind: ChainEventKind.Replacement, beforeH: 900, afterH: 900).Telling(e => e with { Lot = " B-2 " }), Ct);
        var folder = Path.Combine(plant.Folder.Root, "export");
        await plant.Get<FileExport>().WriteAsync(folder, Ct);

        await using var other = await TestPlant.OpenAsync();
        await other.Import.ImportAsync(A.Folder(folder), null, Ct);
        await using var db = other.Db();
        var raw = Assert.Single(await RawChain.LoadAsync(db, await db.Chains.Select(c => c.Id).ToListAsync(Ct), Ct));
        Assert.Equal(("A-1", "B-2", "B-2"), (raw.Card.Lot, raw.Events[0].Lot, raw.CardNow.Lot));
    }

    [Fact]
    public async Task Every_fact_of_an_event_and_of_a_reading_survives_a_file()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(
            A.Reading(length: "40 3/16", unit: Units.LengthUnit.Inch, counterH: 100) with { TakeUpMm = 12.5 }, Ct);
        var shortened = A.Event(kind: ChainEventKind.Shortened, beforeH: 200);
        await plant.Desk.TakeEventAsync(
            shortened.Telling(e => e with { PitchesOut = 2, TakeUpMm = 3, Note = "slack, \"both\" sides" }), Ct);
        await plant.Desk.TakeEventAsync(
            A.Event(kind: ChainEventKind.Replacement, beforeH: 900).Telling(e => e with { Broke = true, Lot = "B-2" }), Ct);
        var oiled = A.Event(kind: ChainEventKind.Oiling, beforeH: 950);
        await plant.Desk.TakeEventAsync(
            oiled.Telling(e => e with { Oil = new OilApplied(OilMethod.Drip, "ISO VG 100", 20) }), Ct);
        var folder = Path.Combine(plant.Folder.Root, "export");
        await plant.Get<FileExport>().WriteAsync(folder, Ct);

        await using var other = await TestPlant.OpenAsync();
        var report = await other.Import.ImportAsync(A.Folder(folder), null, Ct);
        Assert.Empty(report.Files.SelectMany(f => f.Remarks));
        Assert.Equal(await RowsAsync(plant), await RowsAsync(other));
        var again = await plant.Import.ImportAsync(A.Folder(folder), null, Ct);
        Assert.Equal((0, 5), (again.Taken, again.AlreadyKnown));
    }

    [Fact]
    public async Task Columns_that_nothing_fills_are_not_written()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        await plant.Desk.TakeEventAsync(
            A.Event(kind: ChainEventKind.Replacement, beforeH: 900).Telling(e => e with { Broke = true }), Ct);
        var folder = Path.Combine(plant.Folder.Root, "export");
        await plant.Get<FileExport>().WriteAsync(folder, Ct);
        Assert.Equal(A.EventsHeader + ",broke", (await File.ReadAllLinesAsync(Path.Combine(folder, "events.csv"), Ct))[0]);
        Assert.Equal(
            A.ReadingsHeader + ",strand,taut,load_n",
            (await File.ReadAllLinesAsync(Path.Combine(folder, "readings.csv"), Ct))[0]);
    }

    private static async Task<List<string>> RowsAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        var ids = await db.Chains.Select(c => c.Id).ToListAsync(Ct);
        return [.. (await RawChain.LoadAsync(db, ids, Ct)).OrderBy(c => c.Card.Name, StringComparer.Ordinal).SelectMany(c => new[]
        {
            (c.Card with { SprocketTeeth = [] }).ToString(),
            string.Join('\n', c.Readings.Select(r => r with { Written = r.Written.Replace(',', '.') })), // a file has points only
            string.Join('\n', c.Events),
        })];
    }

    private static async Task<SortedDictionary<string, ForecastRow>> ForecastsAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        var names = await db.Chains.ToDictionaryAsync(c => c.Id, c => c.Name, Ct);
        return new SortedDictionary<string, ForecastRow>(
            await db.Forecasts.Where(f => f.IsLatest).ToDictionaryAsync(f => names[f.ChainId], Ct), StringComparer.Ordinal);
    }
}
