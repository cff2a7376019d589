using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>Measures of links by file: a hoist's chain 5x15 with its maker's limits (docs/references.md [74]).</summary>
public sealed class LinkMeasureFileTests : IAsyncLifetime
{
    private const string Header = "chain,taken_at,counter_h,place,tool,one_link,several_links,links,d1,d2,unit\n";

    private TestPlant plant = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync(
            [
                A.File(
                    "chains.csv",
                    "chain,family,pitch_mm,link_use,link_diameter_mm,link_one_limit_mm,link_several_limit_mm,"
                    + "link_diameter_limit_mm,link_table_source\nHOIST,round_link,15,hand_hoist,5,15.7,170.6,4.5,hoist manual\n"
                    + "DRIVE,roller,25.4,,,,,,\n"),
            ], null, Ct);
    }

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    [Fact]
    public async Task Rows_are_taken_once_and_those_at_fault_are_refused_with_their_reason()
    {
        var file = A.File("link_measures.csv", Header
            + "HOIST,2026-05-01T08:00:00Z,,hook end,caliper,15.2,166.5,,4.9,4.9,mm\n"
            + "HOIST,2026-05-02T08:00:00Z,,,caliper,15.2,,,,,mm\n"
            + "HOIST,,,hook end,caliper,15.2,,,,,mm\n"
            + "DRIVE,2026-05-01T08:00:00Z,,middle,caliper,15.2,,,,,mm\n"
            + "NOBODY,2026-05-01T08:00:00Z,,middle,caliper,15.2,,,,,mm\n"
            + "HOIST,2026-05-03T08:00:00Z,,hook end,caliper,,,,4.9,4.9,\n");
        var first = Assert.Single((await plant.Import.ImportAsync([file], null, Ct)).Files);
        Assert.Equal((FileKind.LinkMeasures, 1, 5), (first.Kind, first.Taken, first.Refused));
        Assert.Equal(
            [(3, "place"), (4, "taken_at"), (5, "chain"), (6, "chain"), (7, "unit")],
            first.Remarks.Select(r => (r.Line, r.Column)).Order());
        var second = Assert.Single((await plant.Import.ImportAsync([file], null, Ct)).Files);
        Assert.Equal((0, 1), (second.Taken, second.AlreadyKnown));
        await using var db = plant.Db();
        Assert.Equal("link_measures.csv:2 (Ina)", (await db.LinkMeasures.SingleAsync(Ct)).ToldBy);
    }

    [Fact]
    public async Task Measures_are_put_right_in_place_and_the_old_ones_stay_on_record_with_the_reason()
    {
        await plant.Import.ImportAsync(
            [A.File("link_measures.csv", Header + "HOIST,2026-05-01T08:00:00Z,,hook end,caliper,15.9,,,,,mm\n")], null, Ct);
        await using var db = plant.Db();
        var wrong = await db.LinkMeasures.SingleAsync(Ct);
        var right = new NewLinkMeasures
        {
            Key = "put right",
            Chain = "HOIST",
            TakenAt = wrong.TakenAt,
            Place = "hook end",
            OneLink = "15.09",
            ToldBy = "Ina",
        };
        var desk = plant.Get<LinkMeasureDesk>();
        Assert.Equal("why", Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await desk.CorrectAsync(wrong.Id, right, "", Ct)).Refusals).Field);
        async Task<bool> WasKnownAsync() => Assert.IsType<IntakeAnswer.Taken>(
            await desk.CorrectAsync(wrong.Id, right, "two digits swapped", Ct)).AlreadyKnown;
        Assert.False(await WasKnownAsync());
        Assert.True(await WasKnownAsync());
        Assert.IsType<IntakeAnswer.Refused>(await desk.CorrectAsync(wrong.Id, right with { Key = "again" }, "once more", Ct));
        var rows = await db.LinkMeasures.AsNoTracking().OrderBy(m => m.Id).ToListAsync(Ct);
        var standing = Assert.Single(StandingRows.Standing(rows));
        Assert.Equal((15.09, wrong.Id, "two digits swapped"), (standing.OneLinkMm, standing.CorrectsId, standing.Note));
        Assert.Equal(2, rows.Count);
    }

    // A plan costs a chain by the kept hours left. The oracle is the date that the links' own track gives.
    [Fact]
    public async Task A_chain_of_which_only_links_were_measured_is_planned_by_their_track()
    {
        var rows = string.Concat(Enumerable.Range(0, 5).Select(i => FormattableString.Invariant(
            $"HOIST,2026-0{i + 1}-20T08:00:00Z,{1000 * (i + 1)},hook end,caliper,{15.02 + 0.08 * i:0.00},,,,,mm\n")));
        await plant.Import.ImportAsync([A.File("link_measures.csv", Header + rows)], null, Ct);
        await using var db = plant.Db();
        var id = (await db.Chains.SingleAsync(c => c.Name == "HOIST", Ct)).Id;
        var kept = await db.Forecasts.SingleAsync(f => f.IsLatest && f.ChainId == id, Ct);
        Assert.NotNull(kept.MiddleDate);
        var hours = kept.PercentilesH[49] - (kept.HoursNow - kept.HoursAtLastReading);
        Assert.Equal((kept.MiddleDate.Value - kept.MadeAt).TotalHours, hours, 1.0);
    }
}
