using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Books;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Tracking;

/// <summary>Forty-five chains that reached 3 % at 1,875 h, each with a forecast that stood at half of its life.</summary>
public sealed class SpreadCheckTests
{
    private const int Chains = 45;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Forecasts_that_were_too_sure_are_spread_wider_and_a_person_is_told_once()
    {
        await using var plant = await EndedAsync(_ => (800, 900)); // the limit came 975 h after each: none held
        var before = (await plant.Get<Calibrations>().KnowledgeAsync(Ct)).Version;
        Assert.True(await plant.Get<SpreadCheck>().RunOnceAsync(Ct));
        Assert.False(await plant.Get<SpreadCheck>().RunOnceAsync(Ct));

        await using var db = plant.Db();
        var spread = Assert.Single(await db.Spreads.ToListAsync(Ct));
        Assert.Equal((Chains, 0), (spread.Lives, spread.Held));
        Assert.True(spread.LateExponent > 1.5);
        var notice = Assert.Single(await db.PlantNotices.ToListAsync(Ct));
        Assert.Contains($"Of the last {Chains} lives 0 ended within the 90 % "
            + $"interval", notice.Why.ToString(), StringComparison.Ordinal);
        var knowledge = await plant.Get<Calibrations>().KnowledgeAsync(Ct);
        Assert.NotEqual(before, knowledge.Version);
        Assert.Equal(spread.ToSpread(), knowledge.Spread);
    }

    [Fact]
    public async Task The_next_review_gives_every_forecast_the_new_spread()
    {
        await using var plant = await EndedAsync(_ => (800, 900));
        await plant.Review.ReviewAsync(null, null, Ct);
        await using var db = plant.Db();
        var narrow = await db.Forecasts.AsNoTracking().FirstAsync(f => f.IsLatest, Ct);
        await plant.Get<SpreadCheck>().RunOnceAsync(Ct);
        await plant.Review.ReviewAsync(null, null, Ct);
        var wide = await db.Forecasts.AsNoTracking().FirstAsync(f => f.IsLatest && f.ChainId == narrow.ChainId, Ct);
        var spread = (await db.Spreads.SingleAsync(Ct)).ToSpread();
        Assert.Equal((spread.Early, spread.Late), (wide.EarlyExponent, wide.LateExponent));
        Assert.Equal(narrow.PercentilesH.Select(h => Math.Round(h, 6)),
            spread.Undo(wide.ToForecast()).PercentilesHours.Select(h => Math.Round(h, 6)));
    }

    [Fact]
    public async Task Forecasts_that_held_as_stated_stay_as_they_are()
    {
        await using var plant = await EndedAsync(i => i % 10 == 0 ? (800, 900) : (700, 1300));
        Assert.False(await plant.Get<SpreadCheck>().RunOnceAsync(Ct));
        await using var db = plant.Db();
        Assert.Empty(await db.PlantNotices.ToListAsync(Ct));
    }

    private static async Task<TestPlant> EndedAsync(Func<int, (double EarlyH, double LateH)> forecast)
    {
        var plant = await TestPlant.OpenAsync();
        string[] names = [.. Enumerable.Range(0, Chains).Select(i => FormattableString.Invariant($"K{i:00}"))];
        await plant.Import.ImportAsync(
        [
            A.File("chains.csv", "chain,pitch_mm,limit_pct,fitted_at,fitted_counter_h\n"
                + string.Concat(names.Select(n => $"{n},25.4,3,2026-01-01,0\n"))),
            A.File("readings.csv", A.ReadingsHeader + "\n" + string.Concat(names.SelectMany(n => Enumerable.Range(1, 5)
                .Select(i => FormattableString.Invariant($"{n},2026-0{i}-20,{500 * i},tape,,40,{A.Length(0.8 * i)},mm,\n"))))),
        ], null, Ct);
        await using var db = plant.Db();
        foreach (var chain in await db.Chains.OrderBy(c => c.Name).ToListAsync(Ct))
        {
            var (early, late) = forecast(Array.IndexOf(names, chain.Name));
            db.Forecasts.Add(new ForecastRow
            {
                ChainId = chain.Id,
                MadeAt = TestPlant.Start.AddDays(-100),
                ModelVersion = "broad prior",
                LimitSource = "",
                LimitPct = 3,
                HoursAtLastReading = 900,
                HoursNow = 900,
                // Straight on the logarithm from the 5 % end to the 95 % end.
                PercentilesH = [.. Enumerable.Range(1, 99).Select(p => early * Math.Pow(late / early, (p - 5) / 90.0))],
            });
        }

        await db.SaveChangesAsync(Ct);
        return plant;
    }
}
