using WearWatch.Dashboard.Overview.ChainList;
using WearWatch.Dashboard.Overview.Glance;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Dashboard.Overview.OneChain;
using WearWatch.Plant.Rounds;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.ChainList;

/// <summary>A swap that is planned is known to the list, the glance, the notices, the chain's page and the floor alike.</summary>
public sealed class PlannedSwapTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static DateTimeOffset Saturday => A.In(10);

    public async ValueTask InitializeAsync()
    {
        await using var db = await host.OpenAsync();
        db.Chains.AddRange(A.Chain("K-1"), A.Chain("K-2"), A.Chain("K-3"), A.Chain("K-4"));
        await db.SaveChangesAsync(Ct);
        foreach (var id in new[] { 1, 2, 3, 4 })
        {
            db.Forecasts.Add(A.Forecast(id, Condition.SwapNow, earlyInDays: 20));
            db.Notices.Add(new NoticeRow
            {
                ChainId = id,
                Kind = NoticeKind.LimitNear,
                Urgent = true,
                Why = $"why",
                WhatToDo = $"what",
                RaisedAt = A.In(-id),
            });
        }

        db.Swaps.AddRange(
            Swap(1, SwapEnd.Planned, Saturday), Swap(2, SwapEnd.Replaced, Saturday), Swap(3, SwapEnd.Planned, null));
        await db.SaveChangesAsync(Ct);
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task The_list_shows_it_filters_by_it_and_sorts_by_it()
    {
        var list = host.Get<ChainListQuery>();
        var planned = await list.AskAsync(ChainFilter.FromQuery("?planned=yes"), 0, 10, Ct);
        Assert.Equal([("K-1", Saturday)], planned.Rows.Select(r => (r.Name, r.PlannedSwap!.Value)));
        var others = await list.AskAsync(ChainFilter.FromQuery("?planned=no"), 0, 10, Ct);
        Assert.Equal(["K-2", "K-3", "K-4"], others.Rows.Select(r => r.Name));
        var sorted = await list.AskAsync(ChainFilter.FromQuery("?sort=planned"), 0, 10, Ct);
        Assert.Equal("K-1", sorted.Rows[0].Name);
        Assert.Equal("?planned=no&sort=planned", ChainFilter.FromQuery("?sort=planned&planned=no").ToQuery());
    }

    [Fact]
    public async Task The_glance_counts_what_is_due_and_planned_apart_from_what_is_due_and_not()
    {
        var view = await host.Get<GlanceQuery>().AskAsync(Ct);
        Assert.Equal((4, 3), (view.DueAhead, view.DueNotPlanned));
        var link = new Uri("http://mill" + view.DueLink(planned: false)).Query;
        Assert.Equal(3, (await host.Get<ChainListQuery>().AskAsync(ChainFilter.FromQuery(link), 0, 10, Ct)).Total);
    }

    [Fact]
    public async Task A_notice_of_a_limit_asks_no_more_once_its_swap_is_planned_and_stands_after_those_that_do()
    {
        var notices = await host.Get<NoticesQuery>().AskAsync(new NoticeFilter(), Ct);
        Assert.Equal(
            [("K-2", true), ("K-3", true), ("K-4", true), ("K-1", false)], notices.Select(n => (n.Chain, n.Shouts)));
        Assert.Equal(Saturday, notices[3].PlannedSwap);
    }

    [Theory]
    [InlineData(NoticeKind.LimitNear, false, true, false)]
    [InlineData(NoticeKind.LimitNear, false, false, true)]
    [InlineData(NoticeKind.LimitNear, true, true, true)]
    [InlineData(NoticeKind.RateHasRisen, false, true, true)]
    public void Only_the_limit_of_a_chain_that_holds_no_load_is_answered_by_a_plan(
        NoticeKind kind, bool holdsLoad, bool planned, bool asks) =>
        Assert.Equal(asks, new NoticeAttention(kind, Urgent: true, holdsLoad) { SwapIsPlanned = planned }.Shouts);

    [Fact]
    public async Task The_chains_page_and_the_floor_tell_its_day()
    {
        var view = await host.Get<OneChainQuery>().AskAsync("K-1", Ct);
        Assert.StartsWith("Swap planned for ", view!.Swap, StringComparison.Ordinal);
        Assert.EndsWith(", decided by Petra, locked.", view.Swap, StringComparison.Ordinal);
        Assert.True(view.Picture.SwapH > view.Picture.NowH);
        Assert.Null((await host.Get<OneChainQuery>().AskAsync("K-2", Ct))!.Swap);
        var floor = await host.Get<FloorQuery>().AskAsync(Ct);
        Assert.Equal([Saturday, null, null, null], floor.Select(c => c.PlannedSwap));
    }

    private static SwapRow Swap(int chain, SwapEnd outcome, DateTimeOffset? start) => new()
    {
        ChainId = chain,
        WindowId = start is null ? null : "Press",
        Start = start,
        End = start?.AddHours(8),
        Placing = SwapPlacing.Locked,
        DecidedBy = "Petra",
        DecidedAt = A.In(-1),
        Outcome = outcome,
    };
}
