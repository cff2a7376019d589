using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Notices;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Notices;

public sealed class NoticeBoardTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        await using var db = await host.OpenAsync();
        db.Chains.AddRange(A.Chain("K-1"), A.Chain("K-2", line: "Drying"));
        await db.SaveChangesAsync(Ct);
        db.Notices.AddRange(
            Notice(1, NoticeKind.OilingDue, urgent: false), Notice(1, NoticeKind.LimitNear, urgent: true),
            Notice(2, NoticeKind.OilingDue, urgent: false, ended: true));
        await db.SaveChangesAsync(Ct);
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task Open_notices_stand_with_the_urgent_ones_first() =>
        Assert.Equal([NoticeKind.LimitNear, NoticeKind.OilingDue], (await AskAsync(new NoticeFilter())).Select(n => n.Kind));

    [Fact]
    public async Task Filters_narrow_the_list()
    {
        Assert.Single(await AskAsync(new NoticeFilter { UrgentOnly = true }));
        Assert.Single(await AskAsync(new NoticeFilter { Kind = NoticeKind.OilingDue }));
        Assert.Empty(await AskAsync(new NoticeFilter { Line = "Drying" }));
        Assert.Equal("K-2", Assert.Single(await AskAsync(new NoticeFilter { Ended = true })).Chain);
    }

    [Fact]
    public async Task A_judgement_is_kept_told_to_the_screens_and_can_be_taken_back()
    {
        var judging = host.Get<NoticeDesk>();
        var id = (await AskAsync(new NoticeFilter()))[0].Id;
        var told = new List<int>();
        host.Get<WearWatch.Storage.PlantNews>().ChainsChanged += ids => told.AddRange(ids);
        Assert.True(await judging.JudgeAsync(id, false, "Ina", Ct));
        var judged = (await AskAsync(new NoticeFilter()))[0];
        Assert.Equal((false, "Ina"), (judged.JudgedReal, judged.JudgedBy));
        Assert.Equal([1], told);
        Assert.True(await judging.JudgeAsync(id, null, "Ina", Ct));
        Assert.Null((await AskAsync(new NoticeFilter()))[0].JudgedReal);
        Assert.False(await judging.JudgeAsync(99, true, "Ina", Ct));
    }

    [Fact]
    public void A_filter_survives_its_address()
    {
        var filter = new NoticeFilter
        {
            Kind = NoticeKind.RateHasRisen,
            Line = "Press & more",
            UrgentOnly = true,
            Ended = true,
            Standing = NoticeStanding.Snoozed,
            AssignedTo = "Ina & Ben",
        };
        Assert.Equal(filter, NoticeFilter.FromQuery(filter.ToQuery()));
        Assert.Equal(new NoticeFilter(), NoticeFilter.FromQuery("?kind=99&urgent=1"));
    }

    private async Task<IReadOnlyList<NoticeLine>> AskAsync(NoticeFilter filter) =>
        await host.Get<NoticesQuery>().AskAsync(filter, Ct);

    private static NoticeRow Notice(int chain, NoticeKind kind, bool urgent, bool ended = false) => new()
    {
        ChainId = chain,
        Kind = kind,
        Urgent = urgent,
        Why = $"why",
        WhatToDo = $"what",
        RaisedAt = A.In(-2),
        EndedAt = ended ? A.In(-1) : null,
    };
}
