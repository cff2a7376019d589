using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Chains.Links;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;
using WearWatch.Units;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>
/// A hoist's chain 5x15 with its maker's published limits: L1 15.7, L11 170.6, dm 4.5 mm (docs/references.md [74]).
/// </summary>
public sealed class LinkMeasureDeskTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static async Task<TestPlant> HoistAsync()
    {
        var plant = await TestPlant.OpenAsync();
        await using var db = plant.Db();
        db.Chains.Add(new ChainRow
        {
            Name = "HOIST",
            PitchMm = 15,
            Family = ChainFamily.Find("round_link")!,
            Lifts = true,
            FittedAt = TestPlant.Start.AddDays(-300),
            LinkUse = LinkUse.PoweredHoist,
            LinkDiameterMm = 5,
            LinkOneLimitMm = 15.7,
            LinkSeveralLimitMm = 170.6,
            LinkDiameterLimitMm = 4.5,
            LinkTableSource = "a hoist maker's manual, p. 12",
        });
        await db.SaveChangesAsync(Ct);
        return plant;
    }

    private static NewLinkMeasures Entry(string key = "k1") => new()
    {
        Key = key,
        Chain = "HOIST",
        TakenAt = TestPlant.Start,
        Place = "40 links above the hook",
        OneLink = "15.2",
        SeveralLinks = "166.5",
        D1 = "4.85",
        D2 = "4.95",
        ToldBy = "A. Fitter",
    };

    private static async Task<ForecastRow> LatestAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        return await db.Forecasts.AsNoTracking().SingleAsync(f => f.IsLatest, Ct);
    }

    [Fact]
    public async Task Measures_are_kept_apart_and_the_chain_is_judged_by_the_worst()
    {
        await using var plant = await HoistAsync();
        Assert.IsType<IntakeAnswer.Taken>(await plant.Get<LinkMeasureDesk>().TakeAsync(Entry(), Ct));
        await using var db = plant.Db();
        var row = await db.LinkMeasures.SingleAsync(Ct);
        Assert.Equal((15.2, 166.5, 11, 4.85, 4.95),
            (row.OneLinkMm, row.SeveralLinksMm, row.Links, row.D1Mm, row.D2Mm));
        Assert.Equal("L1 15.2 mm; L 166.5 mm; d1 4.85 mm; d2 4.95 mm", row.Written);
        var forecast = await LatestAsync(plant);
        Assert.Equal((Condition.WithinLimit, Condition.WithinLimit, row.Id),
            (forecast.LinksCondition, forecast.Condition, forecast.LastLinkMeasureId));
        Assert.Contains("limit: inner length of one link 15.20 mm", forecast.LinksSaid.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_measure_at_its_limit_takes_the_whole_chain_out_of_use_and_tells_a_notice()
    {
        await using var plant = await HoistAsync();
        await plant.Get<LinkMeasureDesk>().TakeAsync(Entry() with { D1 = "4.1", D2 = "4.9" }, Ct);
        var forecast = await LatestAsync(plant);
        Assert.Equal(Condition.SwapNow, forecast.Condition);
        await using var db = plant.Db();
        var notice = await db.Notices.SingleAsync(n => n.Kind == NoticeKind.LimitNear && n.EndedAt == null, Ct);
        Assert.True(notice.Urgent);
        Assert.StartsWith("Discard limit reached: mean of two diameters 4.50 mm", notice.Why.ToString(),
            StringComparison.Ordinal);
        Assert.Contains("out of use", notice.WhatToDo.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_a_withdrawal_with_its_reason_takes_a_slip_away()
    {
        await using var plant = await HoistAsync();
        var desk = plant.Get<LinkMeasureDesk>();
        var slip = Assert.IsType<IntakeAnswer.Taken>(await desk.TakeAsync(Entry() with { OneLink = "15.9" }, Ct)).Id;
        await desk.TakeAsync(Entry("k2"), Ct);
        Assert.Equal(Condition.SwapNow, (await LatestAsync(plant)).Condition);
        Assert.Equal("why", Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await desk.WithdrawAsync(slip, "A. Fitter", " ", Ct)).Refusals).Field);
        Assert.IsType<IntakeAnswer.Taken>(await desk.WithdrawAsync(slip, "A. Fitter", "read 15.9 for 15.2", Ct));
        Assert.Equal(Condition.WithinLimit, (await LatestAsync(plant)).Condition);
        await using var db = plant.Db();
        Assert.Equal(3, await db.LinkMeasures.CountAsync(Ct));
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(await desk.WithdrawAsync(slip, "A. Fitter", "again", Ct)).AlreadyKnown);
    }

    [Fact]
    public async Task The_same_measures_sent_twice_are_stored_once_and_a_used_key_is_refused()
    {
        await using var plant = await HoistAsync();
        var desk = plant.Get<LinkMeasureDesk>();
        await desk.TakeAsync(Entry(), Ct);
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(await desk.TakeAsync(Entry(), Ct)).AlreadyKnown);
        Assert.Equal("key", Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await desk.TakeAsync(Entry() with { D1 = "4.8" }, Ct)).Refusals).Field);
    }

    // 19/32 in are 15.08125 mm; 3/16 in are 4.7625 mm.
    [Fact]
    public async Task Inches_with_fractions_are_taken()
    {
        await using var plant = await HoistAsync();
        await plant.Get<LinkMeasureDesk>().TakeAsync(Entry() with
        {
            OneLink = "19/32",
            SeveralLinks = "",
            D1 = "3/16",
            D2 = "",
            Unit = LengthUnit.Inch,
        }, Ct);
        await using var db = plant.Db();
        var row = await db.LinkMeasures.SingleAsync(Ct);
        Assert.Equal((15.08125, 4.7625), (row.OneLinkMm!.Value, row.D1Mm!.Value));
        Assert.Null(row.Links);
        Assert.Contains("Not measured: length over links, mean of two diameters", (await LatestAsync(plant)).LinksSaid.ToString(),
            StringComparison.Ordinal);
    }

    public static TheoryData<string, NewLinkMeasures> Wrong => new()
    {
        { "place", Entry() with { Place = " " } },
        { "chain", Entry() with { Chain = "NONE" } },
        { "taken_at", Entry() with { TakenAt = null } },
        { "taken_at", Entry() with { TakenAt = TestPlant.Start.AddDays(3) } },
        { "one_link", Entry() with { OneLink = "fifteen" } },
        { "one_link", Entry() with { OneLink = "1.52" } },
        { "links", Entry() with { Links = 5 } },
        { "d2", Entry() with { D2 = "49.5" } },
        { "counter_h", Entry() with { CounterH = -1 } },
        { "one_link", Entry() with { OneLink = "", SeveralLinks = "", D1 = "", D2 = "" } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public async Task What_cannot_be_is_refused_by_its_field(string field, NewLinkMeasures entry)
    {
        await using var plant = await HoistAsync();
        Assert.Equal(field, Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await plant.Get<LinkMeasureDesk>().TakeAsync(entry, Ct)).Refusals).Field);
        await using var db = plant.Db();
        Assert.Equal(0, await db.LinkMeasures.CountAsync(Ct));
    }

    [Fact]
    public async Task A_chain_whose_diameter_is_not_known_asks_for_its_card()
    {
        await using var plant = await HoistAsync();
        await plant.AddChainAsync("DRIVE");
        var refused = Assert.IsType<IntakeAnswer.Refused>(
            await plant.Get<LinkMeasureDesk>().TakeAsync(Entry() with { Chain = "DRIVE" }, Ct));
        Assert.Contains("in its master data", Assert.Single(refused.Refusals).Reason.ToString(), StringComparison.Ordinal);
    }
}
