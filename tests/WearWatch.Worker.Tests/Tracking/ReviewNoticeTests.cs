using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

/// <summary>Notices that the review of a chain raises and ends.</summary>
public sealed class ReviewNoticeTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_worn_chain_gets_an_urgent_notice_that_ends_with_its_replacement()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "fitted_counter_h=0");
        for (var i = 1; i <= 8; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.45 * i), Ct);
        var open = Assert.Single(await OpenAsync(plant, id), n => n.Kind == NoticeKind.LimitNear);
        Assert.True(open.Urgent);
        Assert.Equal(Condition.SwapNow, (await LatestAsync(plant, id)).Condition);
        await plant.Desk.TakeEventAsync(A.Event(kind: ChainEventKind.Replacement, beforeH: 4100, afterH: 4100), Ct);
        Assert.DoesNotContain(await OpenAsync(plant, id), n => n.Kind == NoticeKind.LimitNear);
    }

    [Fact]
    public async Task A_notice_that_a_person_closed_stays_closed_until_something_new_is_told()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "fitted_counter_h=0");
        for (var i = 1; i <= 8; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.45 * i), Ct);
        plant.Clock.Advance(TimeSpan.FromMinutes(5));
        await using (var db = plant.Db())
        {
            var notice =
                await db.Notices.SingleAsync(n => n.ChainId == id && n.Kind == NoticeKind.LimitNear && n.EndedAt == null, Ct);
            (notice.EndedAt, notice.JudgedReal, notice.JudgedBy) = (plant.Clock.GetUtcNow(), true, "K. Sommer");
            await db.SaveChangesAsync(Ct);
        }

        await plant.Review.ReviewAsync([id], null, Ct);
        Assert.DoesNotContain(await OpenAsync(plant, id), n => n.Kind == NoticeKind.LimitNear);
        plant.Clock.Advance(TimeSpan.FromMinutes(5));
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 4500, percent: 4.2), Ct);
        Assert.Contains(await OpenAsync(plant, id), n => n.Kind == NoticeKind.LimitNear);
    }

    [Fact]
    public async Task Oil_that_is_due_raises_a_notice_that_ends_with_the_oiling()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "fitted_counter_h=0 lubrication=manual oiling_interval_h=200");
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 300, takenAt: TestPlant.Start), Ct);
        Assert.Contains(await OpenAsync(plant, id), n => n.Kind == NoticeKind.OilingDue);
        await plant.Desk.TakeEventAsync(A.Event(kind: ChainEventKind.Oiling, beforeH: 300, at: TestPlant.Start), Ct);
        Assert.DoesNotContain(await OpenAsync(plant, id), n => n.Kind == NoticeKind.OilingDue);
        Assert.Equal(0, (await LatestAsync(plant, id)).HoursSinceOiling);
    }

    [Fact]
    public async Task A_review_that_a_killed_process_still_owed_is_found_and_done()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await using (var db = plant.Db())
        {
            db.Readings.Add(new ReadingRow { ChainId = id, Key = "k", CounterH = 100, Pitches = 40, LengthMm = 1020 });
            await db.SaveChangesAsync(Ct);
        }

        Assert.Equal([id], await plant.Get<DueReviews>().FindAsync(Ct));
        await plant.Get<Worker.Jobs.TimelyReview>().RunOnceAsync(Ct);
        Assert.Empty(await plant.Get<DueReviews>().FindAsync(Ct));
        Assert.Equal(1, (await LatestAsync(plant, id)).ReadingsUsed);
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
