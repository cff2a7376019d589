using WearWatch.Chains.Families;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Overview.Glance;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Dashboard.Overview.OneChain;
using WearWatch.Plant.Notices;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Notices;

/// <summary>What people said of notices, on the pages that show or count them.</summary>
public sealed class NoticeStandingTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        await using var db = await host.OpenAsync();
        db.Chains.AddRange(A.Chain("K-1"), A.Chain("K-2"), A.Chain("K-3"), A.Chain("L-1", family: ChainFamily.Named("leaf")));
        await db.SaveChangesAsync(Ct);
        for (var chain = 1; chain <= 4; chain++)
        {
            db.Notices.Add(new NoticeRow
            {
                ChainId = chain,
                Kind = NoticeKind.LimitNear,
                Urgent = true,
                Why = $"why",
                WhatToDo = $"what",
                RaisedAt = A.In(-chain),
            });
        }

        await db.SaveChangesAsync(Ct);
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task What_is_acknowledged_or_put_off_stops_shouting_stands_last_and_is_counted_apart()
    {
        Assert.Equal(new NoticeCounts(4, 4), (await host.Get<GlanceQuery>().AskAsync(Ct)).NoticeCounts);
        await StepAsync(1, NoticeStepKind.Acknowledged);
        await StepAsync(2, NoticeStepKind.Snoozed);
        await StepAsync(4, NoticeStepKind.Acknowledged);
        var notices = await AskAsync(new NoticeFilter());
        Assert.Equal(
            [("K-3", true), ("L-1", true), ("K-1", false), ("K-2", false)], notices.Select(n => (n.Chain, n.Shouts)));
        Assert.Equal(["Ina"], notices[2].Steps.Select(s => s.By));
        Assert.Equal(new NoticeCounts(4, 2), (await host.Get<GlanceQuery>().AskAsync(Ct)).NoticeCounts);
        var own = Assert.Single((await host.Get<OneChainQuery>().AskAsync("K-2", Ct))!.Facts.Notices);
        Assert.Equal((false, NoticeStanding.Snoozed), (own.Shouts, own.Attention.Standing));
    }

    [Fact]
    public async Task The_list_is_narrowed_by_standing_and_by_who_looks_after_it()
    {
        await StepAsync(1, NoticeStepKind.Acknowledged);
        await StepAsync(2, NoticeStepKind.Assigned, "Ben");
        Assert.Equal(["K-1"], Names(await AskAsync(new NoticeFilter { Standing = NoticeStanding.Acknowledged })));
        Assert.Equal(["K-2", "K-3", "L-1"], Names(await AskAsync(new NoticeFilter { Standing = NoticeStanding.Asks })));
        Assert.Equal(["K-2"], Names(await AskAsync(new NoticeFilter { AssignedTo = "Ben" })));
        Assert.Equal(["K-3", "L-1", "K-1"], Names(await AskAsync(new NoticeFilter { AssignedTo = "" })));
        Assert.Equal(["Ben"], await host.Get<NoticesQuery>().AssignedAsync(Ct));
    }

    [Fact]
    public async Task The_open_data_door_has_how_it_stands_and_each_step()
    {
        await StepAsync(2, NoticeStepKind.Snoozed);
        var tables = host.Get<HistoryTables>();
        var steps = tables.Of("notice_steps")!;
        var page = await steps.Page(0, 10, Ct);
        Assert.Single(page);
        Assert.Contains("snoozed_until", tables.Of("notices")!.Columns.Select(c => c.Name));
        Assert.Equal(
            ["id", "chain", "notice_id", "step", "at", "by", "person", "until", "comment"], steps.Columns.Select(c => c.Name));
    }

    private async Task<IReadOnlyList<NoticeLine>> AskAsync(NoticeFilter filter) =>
        await host.Get<NoticesQuery>().AskAsync(filter, Ct);

    private static IEnumerable<string> Names(IEnumerable<NoticeLine> notices) => notices.Select(n => n.Chain);

    private async Task StepAsync(long id, NoticeStepKind kind, string person = "") =>
        Assert.IsType<Plant.Intake.IntakeAnswer.Taken>(await host.Get<NoticeStepDesk>().TakeAsync(id, new NewNoticeStep
        {
            Kind = kind,
            Key = $"{kind}-{id}",
            By = "Ina",
            Person = person,
            Until = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime).AddDays(20),
        }, Ct));
}
