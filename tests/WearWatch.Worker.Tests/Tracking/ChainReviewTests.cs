using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

public sealed class ChainReviewTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Recomputing_everything_from_the_raw_rows_gives_the_kept_forecasts_bit_for_bit()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync(A.Folder(A.Data("fleet")), null, Ct);
        await using var db = plant.Db();
        var kept = await db.Forecasts.AsNoTracking().Where(f => f.IsLatest).ToDictionaryAsync(f => f.ChainId, Ct);
        var calendar = await plant.Get<PlantSettings>().CalendarAsync(Ct);
        var made = await plant.Review.AssessAsync([.. kept.Keys], Ct);
        Assert.Equal(60, made.Count);
        Assert.All(made,
            chain => Assert.True(ForecastKeeping.IsSameForecast(kept[chain.Raw.Id], chain.ToRow(calendar, TestPlant.Start))));
    }

    [Fact]
    public async Task A_review_without_news_adds_no_row_that_day_and_one_the_next_day()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        var before = await CountAsync(plant);
        Assert.Equal(0, await plant.Review.ReviewAsync([id], null, Ct));
        plant.Clock.Advance(TimeSpan.FromHours(2));
        Assert.Equal(0, await plant.Review.ReviewAsync([id], null, Ct));
        Assert.Equal(before, await CountAsync(plant));
        plant.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(1, await plant.Review.ReviewAsync([id], null, Ct));
        Assert.Equal(before + 1, await CountAsync(plant));
    }

    [Fact]
    public async Task Time_alone_moves_the_hours_now_and_leaves_the_hours_left_from_the_last_reading()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500, takenAt: TestPlant.Start), Ct);
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 1000, percent: 0.8, takenAt: TestPlant.Start), Ct);
        var before = await LatestAsync(plant, id);
        plant.Clock.Advance(TimeSpan.FromDays(10));
        await plant.Review.ReviewAsync([id], null, Ct);
        var after = await LatestAsync(plant, id);
        Assert.Equal(before.HoursNow + 240, after.HoursNow, 6); // the plant runs round the clock
        Assert.Equal(before.PercentilesH, after.PercentilesH);
    }

    [Fact]
    public async Task A_changed_limit_is_news()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        await plant.AddChainAsync(more: "limit_pct=1.5");
        var latest = await LatestAsync(plant, id);
        Assert.Equal((1.5, LimitReason.SetByPlant), (latest.LimitPct, latest.LimitReason));
    }

    [Fact]
    public async Task A_changed_calendar_is_news()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        for (var i = 1; i <= 4; i++)
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.3 * i, takenAt: TestPlant.Start), Ct);
        var before = await LatestAsync(plant, id);
        await plant.Get<PlantSettings>().ChangeAsync(p => p.Utilisation = 0.5, Ct);
        await plant.Review.ReviewAsync(null, null, Ct);
        var after = await LatestAsync(plant, id);
        Assert.Equal(2 * (before.MiddleDate!.Value - TestPlant.Start).TotalHours,
            (after.MiddleDate!.Value - TestPlant.Start).TotalHours, 0.01);
        Assert.Equal(before.PercentilesH, after.PercentilesH);
    }

    [Fact]
    public async Task Settings_that_make_no_calendar_are_not_kept()
    {
        await using var plant = await TestPlant.OpenAsync();
        var settings = plant.Get<PlantSettings>();
        await Assert.ThrowsAsync<TimeZoneNotFoundException>(() => settings.ChangeAsync(p => p.TimeZone = "Moon/Tranquility", Ct));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => settings.ChangeAsync(p => p.Utilisation = 0, Ct));
        await settings.ChangeAsync(p => p.Shifts = """[{"day":"Monday","start":"06:00","hours":16}]""", Ct);
        Assert.Equal(16, (await settings.CalendarAsync(Ct)).PerWeek.Hours);
    }

    [Fact]
    public async Task Reviews_of_one_chain_at_the_same_time_leave_one_newest_forecast()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await Task.WhenAll(Enumerable.Range(1, 12).Select(i =>
            Task.Run(() => plant.Desk.TakeReadingAsync(A.Reading(counterH: 100 * i, percent: 0.1 * i, confirmed: true), Ct))));
        await using var db = plant.Db();
        var newest = await db.Forecasts.SingleAsync(f => f.ChainId == id && f.IsLatest, Ct);
        Assert.Equal(await db.Readings.MaxAsync(r => r.Id, Ct), newest.LastReadingId);
    }

    [Fact]
    public async Task A_chain_page_sees_what_the_review_kept()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(percent: 1), Ct);
        var assessment = await plant.Get<ChainReader>().AssessAsync(id, Ct);
        Assert.Equal((await LatestAsync(plant, id)).PercentilesH, assessment!.Forecast.PercentilesHours);
        Assert.Null(await plant.Get<ChainReader>().AssessAsync(99, Ct));
        Assert.Single((await plant.Get<ChainReader>().RawAsync(id, Ct))!.Readings);
    }

    [Fact]
    public async Task The_first_import_of_thirty_chains_or_more_trains_a_fleet_model()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync(A.Folder(A.Data("fleet")), null, Ct);
        await using var db = plant.Db();
        var model = await db.FleetModels.SingleAsync(Ct);
        Assert.All(await db.Forecasts.Where(f => f.IsLatest).ToListAsync(Ct), f => Assert.Equal(model.Version, f.ModelVersion));
        Assert.False(await plant.Models.TrainAsync(Ct)); // the same histories give the same model, which is not kept twice
        Assert.Contains("chainsUsed", model.Report, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Below_thirty_chains_the_broad_prior_serves_and_the_log_says_so()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        Assert.False(await plant.Models.TrainAsync(Ct));
        Assert.Equal(WearPrior.Broad.Source.ToString(), (await LatestAsync(plant, id)).ModelVersion);
        Assert.Contains(plant.Log.Lines, line => line.Text.Contains("broad prior serves", StringComparison.Ordinal));
    }

    private static async Task<int> CountAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        return await db.Forecasts.CountAsync(Ct);
    }

    private static async Task<ForecastRow> LatestAsync(TestPlant plant, int chainId)
    {
        await using var db = plant.Db();
        return await db.Forecasts.SingleAsync(f => f.ChainId == chainId && f.IsLatest, Ct);
    }

    private static async Task<List<NoticeRow>> OpenAsync(TestPlant plant, int chainId)
    {
        await using var db = plant.Db();
        return await db.Notices.Where(n => n.ChainId == chainId && n.EndedAt == null).ToListAsync(Ct);
    }
}
