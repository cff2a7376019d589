using WearWatch.Chains;
using WearWatch.Dashboard.Engineer.Changes;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Lives;
using WearWatch.Plant.Books;
using WearWatch.Plant.Notices;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Engineering;

/// <summary>The desk in the real host.</summary>
public sealed class EngineerHostTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task Lives_come_from_what_was_told_and_follow_it()
    {
        await TellAsync(1, [(0, 0.02), (1000, 1.1), (2000, 2.2), (3000, 3.3), (3500, 3.8)]);
        var book = host.Get<LifeBook>();
        var life = Assert.Single(Assert.Single((await book.ReadAsync(Stop)).Chains).Lives).Life;
        Assert.Equal(LifeEnd.ReachedLimit, life.End);
        Assert.Equal(2000 + 1000 * 0.8 / 1.1, life.Hours, 1.0);

        await TellAsync(2, [(0, 0.02), (900, 0.4)]);
        var fleet = await book.ReadAsync(Stop);
        Assert.Equal([LifeEnd.ReachedLimit, LifeEnd.StillRunning], fleet.Chains.Select(c => c.Lives[0].Life.End));
        Assert.Same(fleet, await book.ReadAsync(Stop));
    }

    [Fact]
    public async Task The_picture_of_lives_is_a_file_that_stands_alone()
    {
        await TellAsync(1, [(0, 0.02), (1000, 1.1), (2000, 2.2), (3000, 3.3), (3500, 3.8)]);
        var answer = await host.CreateClient().GetAsync("/engineering/lives/survival.svg?by=all", Stop);
        var text = await answer.Content.ReadAsStringAsync(Stop);
        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType?.MediaType);
        Assert.StartsWith("<svg", text.TrimStart(), StringComparison.Ordinal);
        Assert.DoesNotContain("var(--", text, StringComparison.Ordinal);
        Assert.Contains("all chains: 1 failure of 1", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kept_forecast_is_scored_when_its_chain_reaches_the_limit()
    {
        // reaches 3 % at about 3,000 h
        var id = await TellAsync(1, [(0, 0.02), (1000, 1.0), (2000, 2.0), (4000, 4.0), (4500, 4.4)]);
        await using (var db = await host.OpenAsync())
        {
            db.Forecasts.Add(Kept(id, hoursNow: 1000));
            db.Forecasts.Add(Kept(id, hoursNow: 2600)); // stood at neither 25 nor 50 nor 75 % of 3,000 h, but at 90 %
            await db.SaveChangesAsync(Stop);
        }

        var scores = await host.Get<RecordQuery>().ForecastsAsync(madeAgain: false, Stop);
        Assert.Equal([0.5, 0.75, 0.9], scores.Select(s => s.AtShare));
        Assert.Equal([1000, 1000, 2600], scores.Select(s => s.Score.LastReadingHours));
    }

    [Fact]
    public async Task Forecasts_made_again_know_only_what_was_read_by_then()
    {
        var id = await TellAsync(1, [(0, 0.02), (1000, 1.0), (2000, 2.0), (4000, 4.0), (4500, 4.4)]);
        var records = host.Get<RecordQuery>();
        await host.Get<RemadeForecasts>().Begin(await host.Get<LifeBook>().ReadAsync(Stop));
        var scores = await records.ForecastsAsync(madeAgain: true, Stop);
        Assert.Equal([0, 1000, 2000, 2000], scores.Select(s => Math.Round(s.Score.LastReadingHours)));

        // Poison the future: what is read after 2,000 h must not change what was known at it.
        await TellAsync(1, [(5000, 7.5)], id);
        await host.Get<RemadeForecasts>().Begin(await host.Get<LifeBook>().ReadAsync(Stop));
        var poisoned = await records.ForecastsAsync(madeAgain: true, Stop);
        Assert.Equal(scores.Select(s => s.Score.Forecast!.MiddleHours), poisoned.Select(s => s.Score.Forecast!.MiddleHours));
    }

    // A page that heard "nothing is being made" would say that there is nothing, and ask no more.
    [Fact]
    public async Task Whoever_asks_for_forecasts_made_again_hears_that_they_are_being_made_or_gets_them()
    {
        await TellAsync(1, [(0, 0.02), (1000, 1.0), (2000, 2.0), (4000, 4.0), (4500, 4.4)]);
        var view = await host.Get<RecordQuery>().AskAsync(new RecordFilter(Remade: true, AtShare: 0.5, By: null), Stop);
        Assert.True(view.Progress is not null || view.Lives > 0);
    }

    [Fact]
    public async Task A_false_alarm_is_kept_and_ends_its_notice()
    {
        var id = await TellAsync(1, [(0, 0.02)]);
        long notice;
        await using (var db = await host.OpenAsync())
        {
            var row = new NoticeRow
            {
                ChainId = id,
                Kind = NoticeKind.RateHasRisen,
                Why = $"It wears twice as fast.",
                WhatToDo = $"Look.",
                RaisedAt = A.Now,
            };
            db.Notices.Add(row);
            await db.SaveChangesAsync(Stop);
            notice = row.Id;
        }

        Assert.True(await host.Get<NoticeDesk>().JudgeRateChangeAsync(notice, real: false, "R. Engineer", Stop));
        var view = await host.Get<ChangesQuery>().AskAsync(Stop);
        Assert.Equal(new ObservedShare(0, 1), view.Real);
        Assert.Equal((false, "R. Engineer", true),
            (view.Rows[0].JudgedReal!.Value, view.Rows[0].JudgedBy, view.Rows[0].EndedAt is not null));
        Assert.False(await host.Get<NoticeDesk>().JudgeRateChangeAsync(notice + 1, real: true, "", Stop));
    }

    [Fact]
    public async Task A_view_is_worked_out_once_until_a_life_changes()
    {
        await TellAsync(1, [(0, 0.02), (1000, 1.0)]);
        var (lives, filter) = (host.Get<LivesQuery>(), LivesFilter.FromQuery("?by=line"));
        var first = await lives.AskAsync(filter, Stop);
        Assert.Same(first, await lives.AskAsync(filter, Stop));
        await TellAsync(2, [(0, 0.02), (1000, 1.0)]);
        Assert.NotSame(first, await lives.AskAsync(filter, Stop));
    }

    private static ForecastRow Kept(int chain, double hoursNow) => new()
    {
        ChainId = chain,
        MadeAt = A.Now,
        ModelVersion = "m1",
        HoursAtLastReading = hoursNow,
        HoursNow = hoursNow,
        LimitPct = 3,
        LimitReason = LimitReason.General,
        LimitSource = "test",
        PercentilesH = A.Percentiles(500, 3500),
    };

    /// <summary>Readings of a chain of 100 pitches of 25.4 mm, by hours and percent, straight into the memory.</summary>
    private async Task<int> TellAsync(int number, (double Hours, double Percent)[] readings, int? known = null)
    {
        using var client = host.CreateClient(); // starts the host, which opens the database
        await using var db = await host.OpenAsync();
        var id = known;
        if (id is null)
        {
            var chain = A.Chain($"K-{number}");
            chain.LimitPct = 3;
            db.Chains.Add(chain);
            await db.SaveChangesAsync(Stop);
            id = chain.Id;
        }

        db.Readings.AddRange(readings.Select(r => A.Reading(
            id.Value, $"k{number}-{r.Hours}", 2540 * (1 + r.Percent / 100), 100, A.In((r.Hours - 10_000) / 24), r.Hours)));
        await db.SaveChangesAsync(Stop);
        return id.Value;
    }
}
