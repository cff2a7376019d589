using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Parts;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>
/// Readings of parts, by desk and by file. A conveyor's pin goes to 0.975 of its diameter: docs/references.md [27].
/// </summary>
public sealed class PartReadingTests : IAsyncLifetime
{
    private const string Header = "chain,taken_at,counter_h,part,place,value,new,limit,limit_source,unit\n";

    private TestPlant plant = null!;
    private int id;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        plant = await TestPlant.OpenAsync();
        id = await plant.AddChainAsync("SLAT", "family=conveyor pitches=80");
    }

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    private static NewPartReading Entry(
        string value, string key = "k1", string part = "pin_diameter", string fresh = "20") => new(
        new PartAsWritten
        {
            Chain = "SLAT",
            TakenAt = TestPlant.Start,
            Part = part,
            Place = "link 3",
            Value = value,
            New = fresh,
        },
        key, "A. Fitter");

    private async Task<List<NoticeRow>> NoticesAsync()
    {
        await using var db = plant.Db();
        return await db.Notices.AsNoTracking().Where(n => n.Kind == NoticeKind.PartWorn && n.EndedAt == null).ToListAsync(Ct);
    }

    [Fact]
    public async Task A_pin_at_its_limit_moves_the_chain_and_raises_a_notice_until_it_is_withdrawn()
    {
        var desk = plant.Get<PartDesk>();
        var taken = Assert.IsType<IntakeAnswer.Taken>(await desk.TakeAsync(Entry("19.5"), Ct));
        await using var db = plant.Db();
        Assert.Equal(Condition.SwapNow, (await db.Forecasts.AsNoTracking().SingleAsync(f => f.IsLatest, Ct)).Condition);
        var notice = Assert.Single(await NoticesAsync());
        Assert.True(notice.Urgent);
        Assert.StartsWith("Limit reached: pin diameter 19.5 mm (least 19.5 mm", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Equal("why", Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await desk.WithdrawAsync(taken.Id, "A. Fitter", " ", Ct)).Refusals).Field);
        Assert.IsType<IntakeAnswer.Taken>(await desk.WithdrawAsync(taken.Id, "A. Fitter", "read 19.5 for 19.9", Ct));
        Assert.Empty(await NoticesAsync());
        Assert.Equal(2, await db.PartReadings.CountAsync(Ct));
    }

    [Fact]
    public async Task The_same_reading_sent_twice_is_stored_once_and_a_used_key_is_refused()
    {
        var desk = plant.Get<PartDesk>();
        await desk.TakeAsync(Entry("19.9"), Ct);
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(await desk.TakeAsync(Entry("19.9"), Ct)).AlreadyKnown);
        Assert.Equal("key", Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await desk.TakeAsync(Entry("19.8"), Ct)).Refusals).Field);
    }

    [Fact]
    public async Task A_size_when_new_stays_until_another_is_told()
    {
        var desk = plant.Get<PartDesk>();
        await desk.TakeAsync(Entry("19.9"), Ct);
        await desk.TakeAsync(Entry("19.8", "k2", fresh: ""), Ct);
        var state = (await plant.Get<ChainReview>().AssessAsync([id], Ct)).Single().Parts;
        var track = Assert.Single(state.Tracks);
        Assert.Equal((WearPart.PinDiameter, 19.5, 2), (track.Part, track.Limit!.Mm, track.Findings.Count));
    }

    [Fact]
    public async Task A_tooth_that_is_not_worn_reads_nothing_and_one_that_is_waits_for_the_next_stop()
    {
        var desk = plant.Get<PartDesk>();
        Assert.IsType<IntakeAnswer.Taken>(await desk.TakeAsync(Entry("0", part: "tooth_root", fresh: ""), Ct));
        Assert.Empty(await NoticesAsync());
        await desk.TakeAsync(Entry("3.2", "k2", "tooth_root", ""), Ct);
        var notice = Assert.Single(await NoticesAsync());
        Assert.False(notice.Urgent);
        Assert.Equal("Replace the sprockets together with the chain.", notice.WhatToDo.ToString());
        await using var db = plant.Db();
        Assert.Equal(Condition.PlanASwap, (await db.Forecasts.AsNoTracking().SingleAsync(f => f.IsLatest, Ct)).Condition);
    }

    [Theory]
    [InlineData("part", "19.5", "roler_diameter")]
    [InlineData("part", "19.5", "")]
    [InlineData("value", "", "pin_diameter")]
    [InlineData("value", "nineteen", "pin_diameter")]
    [InlineData("value", "195", "pin_diameter")]
    public async Task What_cannot_be_is_refused_by_its_field(string field, string value, string part)
    {
        Assert.Equal(field, Assert.Single(Assert.IsType<IntakeAnswer.Refused>(
            await plant.Get<PartDesk>().TakeAsync(Entry(value, part: part), Ct)).Refusals).Field);
        await using var db = plant.Db();
        Assert.Equal(0, await db.PartReadings.CountAsync(Ct));
    }

    [Fact]
    public async Task Rows_of_a_file_are_taken_once_and_those_at_fault_are_refused_with_their_reason()
    {
        var file = A.File("part_readings.csv", Header
            + "SLAT,2026-05-01T08:00:00Z,,pin_diameter,link 3,19.9,20,,,mm\n"
            + "SLAT,2026-05-02T08:00:00Z,,pin_diameter,link 3,0.78,,,,in\n"
            + "SLAT,2026-05-02T08:00:00Z,,bush_diameter,link 3,29,,27,,mm\n"
            + "SLAT,,,tooth_root,,1,,,,mm\n"
            + "NOBODY,2026-05-01T08:00:00Z,,tooth_root,,1,,,,mm\n"
            + "SLAT,2026-05-03T08:00:00Z,,tooth_root,,1,,,,\n");
        var first = Assert.Single((await plant.Import.ImportAsync([file], null, Ct)).Files);
        Assert.Equal((FileKind.PartReadings, 2, 4), (first.Kind, first.Taken, first.Refused));
        Assert.Equal([(4, "new"), (5, "taken_at"), (6, "chain"), (7, "unit")],
            first.Remarks.Select(r => (r.Line, r.Column)).Order());
        var second = Assert.Single((await plant.Import.ImportAsync([file], null, Ct)).Files);
        Assert.Equal((0, 2), (second.Taken, second.AlreadyKnown));
        await using var db = plant.Db();
        var rows = await db.PartReadings.AsNoTracking().OrderBy(p => p.Id).ToListAsync(Ct);
        Assert.Equal([19.9, 19.812], rows.Select(r => Math.Round(r.Mm, 6)));
        Assert.Equal("part_readings.csv:2 (Ina)", rows[0].ToldBy);
    }
}
