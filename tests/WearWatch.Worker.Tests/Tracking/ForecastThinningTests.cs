using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Tracking;

public sealed class ForecastThinningTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Of_ten_years_of_daily_forecasts_all_of_the_last_hundred_days_stay_then_weeks_then_months()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        await using (var db = plant.Db())
        {
            await db.Forecasts.ExecuteDeleteAsync(Ct);
            for (var day = 3650; day >= 0; day--)
                db.Forecasts.Add(Forecast(chain, TestPlant.Start.AddDays(-day), isLatest: day == 0));
            await db.SaveChangesAsync(Ct);
        }

        var thinning = plant.Get<ForecastThinning>();
        await thinning.RunOnceAsync(Ct);
        Assert.Equal(0, await thinning.RunOnceAsync(Ct));
        await using var kept = plant.Db();
        var ages = (await kept.Forecasts.Select(f => f.MadeAt).ToListAsync(Ct)).ConvertAll(m => (TestPlant.Start - m).TotalDays);
        Assert.Equal(101, ages.Count(a => a <= 100));
        Assert.InRange(ages.Count(a => a is > 100 and <= 730), 89, 92); // 630 days of weeks
        Assert.InRange(ages.Count(a => a > 730), 104, 106); // 2,920 days of four weeks
        Assert.Equal(1, await kept.Forecasts.CountAsync(f => f.IsLatest, Ct));
    }

    [Fact]
    public async Task The_newest_forecast_of_a_chain_stays_however_old_it_is()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        await using var db = plant.Db();
        db.Forecasts.Add(Forecast(chain, TestPlant.Start.AddDays(-3000), isLatest: false));
        db.Forecasts.Add(Forecast(chain, TestPlant.Start.AddDays(-3000), isLatest: true));
        await db.SaveChangesAsync(Ct);
        await plant.Get<ForecastThinning>().RunOnceAsync(Ct);
        Assert.True(await db.Forecasts.AnyAsync(f => f.IsLatest, Ct));
    }

    private static ForecastRow Forecast(int chain, DateTimeOffset at, bool isLatest) => new()
    {
        ChainId = chain,
        MadeAt = at,
        IsLatest = isLatest,
        ModelVersion = "broad prior",
        LimitSource = "[8]",
        PercentilesH = [],
    };
}
