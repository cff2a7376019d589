using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Rounds;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

/// <summary>A chain whose take-up ends before it is worn has two dates; both are kept, and the phone knows both.</summary>
public sealed class TwoDatesTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // As the review met it: 120 pitches of 25.4 mm with 25 mm of take-up are shortened at 1.64 %, and replaced at 3 %.
    [Fact]
    public async Task The_date_of_shortening_is_kept_beside_that_of_replacement()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "pitches=120 take_up_travel_mm=25");
        for (var visit = 1; visit <= 5; visit++)
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 600 * visit, percent: 0.25 * visit, confirmed: true), Ct);

        await using var db = plant.Db();
        var row = await db.Forecasts.AsNoTracking().SingleAsync(f => f.ChainId == id && f.IsLatest, Ct);
        Assert.Equal((3.0, 2), (row.LimitPct, row.ShortenPitches));
        Assert.Equal(1.64, row.ShortenAtPct!.Value, 0.001);
        Assert.True(row.ShortenEarlyDate < row.EarlyDate && row.ShortenEarlyDate <= row.ShortenMiddleDate);

        var phone = Assert.Single(await plant.Get<FloorQuery>().AskAsync(Ct));
        Assert.Equal((row.ShortenEarlyDate, 2), (phone.Forecast!.ShortenFrom, phone.Forecast.ShortenPitches));
    }

    [Fact]
    public async Task A_chain_that_lifts_has_one_date_only()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "pitches=120 take_up_travel_mm=25 lifts=true");
        for (var visit = 1; visit <= 5; visit++)
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 600 * visit, percent: 0.25 * visit, confirmed: true), Ct);

        await using var db = plant.Db();
        var row = await db.Forecasts.AsNoTracking().SingleAsync(f => f.ChainId == id && f.IsLatest, Ct);
        Assert.Null(row.ShortenAtPct);
        Assert.Equal(1.64, row.LimitPct, 0.001);
    }

    // Two strands of a feeder of 42 m: 0.9 and 1.35 % are 189 mm apart; the plant allows 100 mm.
    [Fact]
    public async Task Chains_of_a_group_that_wear_unlike_are_told_of()
    {
        await using var plant = await TestPlant.OpenAsync();
        int[] ids =
        [
            await plant.AddChainAsync("AF-1", "line=Feeder pitches=1654 group_difference_mm=100"),
            await plant.AddChainAsync("AF-2", "line=Feeder pitches=1654"),
        ];
        await using (var db = plant.Db())
        {
            db.SwapTerms.AddRange(ids.Select(id => new Storage.Rows.SwapTermsRow { ChainId = id, ParallelGroup = "strands" }));
            await db.SaveChangesAsync(Ct);
        }

        for (var visit = 1; visit <= 6; visit++)
        {
            await plant.Desk.TakeReadingAsync(A.Reading("AF-1", 600 * visit, 0.15 * visit, confirmed: true), Ct);
            await plant.Desk.TakeReadingAsync(A.Reading("AF-2", 600 * visit, 0.225 * visit, confirmed: true), Ct);
        }

        await plant.Review.ReviewAsync(ids, null, Ct);
        await using var after = plant.Db();
        var notices = await after.Notices.AsNoTracking().Where(n => n.Kind == NoticeKind.GroupDiffers && n.EndedAt == null)
            .ToListAsync(Ct);
        Assert.Equal(ids, notices.Select(n => n.ChainId).Order());
        Assert.All(notices, n => Assert.Contains("mm apart over the whole chain", n.Why.ToString(), StringComparison.Ordinal));
        Assert.All(notices, n => Assert.Contains("The plant allows 100 mm.", n.Why.ToString(), StringComparison.Ordinal));
    }

    // Slack of 20, 28.3, 34.6 and 40 mm: even steps of the square, the limit of 60 mm (6 % of 1,000 mm) is five steps ahead.
    [Fact]
    public async Task The_date_of_tensioning_by_slack_is_kept_and_begins_anew_once_it_is_tensioned()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "pitches=120 centre_distance_mm=1000");
        for (var visit = 1; visit <= 4; visit++)
        {
            var told = new PartAsWritten
            {
                Chain = "C1",
                CounterH = 500 * visit,
                TakenAt = TestPlant.Start.AddDays(-60 + 10 * visit),
                Part = "sag",
                Value = (20 * Math.Sqrt(visit)).ToString("0.00", CultureInfo.InvariantCulture),
            };
            Assert.IsType<IntakeAnswer.Taken>(
                await plant.Get<PartDesk>().TakeAsync(new NewPartReading(told, $"k{visit}", "Ina"), Ct));
        }

        async Task<DateTimeOffset?> AskAsync()
        {
            await using var db = plant.Db();
            return (await db.Forecasts.AsNoTracking().SingleAsync(f => f.ChainId == id && f.IsLatest, Ct)).TensionFrom;
        }

        var from = await AskAsync();
        Assert.NotNull(from);
        Assert.Equal(from, Assert.Single(await plant.Get<FloorQuery>().AskAsync(Ct)).Forecast!.TensionFrom);
        await plant.Desk.TakeEventAsync(new NewEvent
        {
            Key = "t",
            Told = new ChainEvent { Chain = "C1", Kind = ChainEventKind.Tensioned, At = TestPlant.Start },
            ToldBy = "Ina",
        }, Ct);
        Assert.Null(await AskAsync());
    }

    [Fact]
    public async Task A_card_cannot_have_other_strands_than_its_type()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync("D-1", "chain_type=16B-2 strands=1");
        await using var db = plant.Db();
        Assert.Equal(2, (await db.Chains.SingleAsync(c => c.Id == id, Ct)).ToCard().Strands);
    }
}
