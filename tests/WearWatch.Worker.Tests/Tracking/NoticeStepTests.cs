using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Notices;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

/// <summary>What people do about a notice, and what wakes it again.</summary>
public sealed class NoticeStepTests : IAsyncLifetime
{
    private TestPlant plant = null!;
    private int chain;
    private int made;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private DateOnly Today => DateOnly.FromDateTime(plant.Clock.GetUtcNow().Date);

    public async ValueTask InitializeAsync()
    {
        plant = await TestPlant.OpenAsync();
        chain = await plant.AddChainAsync(more: "fitted_counter_h=0");
    }

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    [Fact]
    public async Task Acknowledged_it_stays_open_and_quiet_with_who_and_when_until_a_person_lets_it_ask_again()
    {
        var id = await RaiseAsync(urgent: true);
        await TakenAsync(id, Step(NoticeStepKind.Acknowledged) with { Comment = "chain is ordered" });
        Assert.True((await NoticeAsync(id)).IsQuiet(plant.Clock.GetUtcNow()));
        var step = Assert.Single(await StepsAsync(id));
        Assert.Equal(
            (NoticeStepKind.Acknowledged, "Ina", "chain is ordered", plant.Clock.GetUtcNow()),
            (step.Kind, step.By, step.Comment, step.At));
        await TakenAsync(id, Step(NoticeStepKind.Woken));
        Assert.False((await NoticeAsync(id)).IsQuiet(plant.Clock.GetUtcNow()));
        Assert.Equal(2, (await StepsAsync(id)).Count);
    }

    [Fact]
    public async Task Put_off_it_asks_again_on_its_day_in_the_plant()
    {
        var id = await RaiseAsync(urgent: true);
        await TakenAsync(id, Step(NoticeStepKind.Snoozed) with { Until = Today.AddDays(3) });
        Assert.True((await NoticeAsync(id)).IsQuiet(plant.Clock.GetUtcNow().AddDays(2)));
        Assert.False((await NoticeAsync(id)).IsQuiet(plant.Clock.GetUtcNow().AddDays(3)));
    }

    [Fact]
    public async Task A_notice_that_becomes_urgent_asks_again_and_what_stays_as_it_was_does_not()
    {
        for (var i = 1; i <= 6; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.4 * i), Ct);
        var id = (await OpenAsync()).Single(n => n is { Kind: NoticeKind.LimitNear, Urgent: false }).Id;
        await TakenAsync(id, Step(NoticeStepKind.Acknowledged));
        await plant.Review.ReviewAsync([chain], null, Ct);
        Assert.True((await NoticeAsync(id)).Acknowledged);
        for (var i = 7; i <= 9; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.4 * i), Ct);
        var notice = await NoticeAsync(id);
        Assert.Equal((null, true, false), (notice.EndedAt, notice.Urgent, notice.Acknowledged));
        var last = (await StepsAsync(id))[^1];
        Assert.Equal((NoticeStepKind.Worsened, ""), (last.Kind, last.By));
    }

    [Fact]
    public async Task Sent_twice_a_step_is_kept_once_and_its_key_is_good_for_nothing_else()
    {
        var id = await RaiseAsync(urgent: false);
        var step = Step(NoticeStepKind.Commented) with { Comment = "alignment checked" };
        await TakenAsync(id, step);
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(await Desk.TakeAsync(id, step, Ct)).AlreadyKnown);
        Assert.Single(await StepsAsync(id));
        await RefusedAsync("key", id, step with { Kind = NoticeStepKind.Acknowledged });
        Assert.Null(await Desk.TakeAsync(999, Step(NoticeStepKind.Acknowledged), Ct));
    }

    [Fact]
    public async Task What_cannot_be_meant_is_refused_by_its_field()
    {
        var id = await RaiseAsync(urgent: false);
        await RefusedAsync("comment", id, Step(NoticeStepKind.Commented) with { Comment = " " });
        await RefusedAsync("comment", id, Step(NoticeStepKind.Commented) with { Comment = new string('x', 1001) });
        await RefusedAsync("until", id, Step(NoticeStepKind.Snoozed));
        await RefusedAsync("until", id, Step(NoticeStepKind.Snoozed) with { Until = Today });
        await RefusedAsync("until", id, Step(NoticeStepKind.Snoozed) with { Until = Today.AddDays(367) });
        await RefusedAsync("step", id, Step(NoticeStepKind.Worsened));
        Assert.Empty(await StepsAsync(id));
        await using var db = plant.Db();
        (await db.Notices.SingleAsync(n => n.Id == id, Ct)).EndedAt = plant.Clock.GetUtcNow();
        await db.SaveChangesAsync(Ct);
        await RefusedAsync("notice", id, Step(NoticeStepKind.Acknowledged));
    }

    [Fact]
    public async Task It_is_given_to_somebody_who_deals_with_chains_and_back_to_nobody()
    {
        var id = await RaiseAsync(urgent: false);
        await TakenAsync(id, Step(NoticeStepKind.Assigned) with { Person = "Ben" }); // nobody is set up: any name
        Assert.Equal("Ben", (await NoticeAsync(id)).AssignedTo);
        await using (var db = plant.Db())
        {
            db.People.AddRange(Person("Vera", PersonRoles.Engineer), Person("Adam", PersonRoles.Administrator));
            await db.SaveChangesAsync(Ct);
        }

        Assert.Equal(["Vera"], await Desk.PeopleAsync(Ct));
        await RefusedAsync("person", id, Step(NoticeStepKind.Assigned) with { Person = "Ben" });
        await RefusedAsync("person", id, Step(NoticeStepKind.Assigned) with { Person = "Adam" });
        await TakenAsync(id, Step(NoticeStepKind.Assigned) with { Person = "Vera" });
        Assert.Equal("Vera", (await NoticeAsync(id)).AssignedTo);
        await TakenAsync(id, Step(NoticeStepKind.Assigned));
        Assert.Equal("", (await NoticeAsync(id)).AssignedTo);
    }

    private NoticeStepDesk Desk => plant.Get<NoticeStepDesk>();

    private static PersonRow Person(string name, PersonRoles roles) =>
        new() { UserName = name, NormalizedUserName = name.ToUpperInvariant(), Roles = roles };

    private NewNoticeStep Step(NoticeStepKind kind) => new() { Kind = kind, Key = $"k{++made}", By = "Ina" };

    private async Task TakenAsync(long id, NewNoticeStep step) =>
        Assert.IsType<IntakeAnswer.Taken>(await Desk.TakeAsync(id, step, Ct));

    private async Task RefusedAsync(string field, long id, NewNoticeStep step) => Assert.Equal(
        field, Assert.Single(Assert.IsType<IntakeAnswer.Refused>(await Desk.TakeAsync(id, step, Ct)).Refusals).Field);

    private async Task<long> RaiseAsync(bool urgent)
    {
        await using var db = plant.Db();
        var notice = new NoticeRow
        {
            ChainId = chain,
            Kind = NoticeKind.LimitNear,
            Urgent = urgent,
            Why = $"why",
            WhatToDo = $"what",
            RaisedAt = plant.Clock.GetUtcNow(),
        };
        db.Notices.Add(notice);
        await db.SaveChangesAsync(Ct);
        return notice.Id;
    }

    private async Task<NoticeRow> NoticeAsync(long id)
    {
        await using var db = plant.Db();
        return await db.Notices.AsNoTracking().SingleAsync(n => n.Id == id, Ct);
    }

    private async Task<List<NoticeRow>> OpenAsync()
    {
        await using var db = plant.Db();
        return await db.Notices.AsNoTracking().Where(n => n.ChainId == chain && n.EndedAt == null).ToListAsync(Ct);
    }

    private async Task<List<NoticeStepRow>> StepsAsync(long id)
    {
        await using var db = plant.Db();
        return await db.NoticeSteps.AsNoTracking().Where(s => s.NoticeId == id).OrderBy(s => s.Id).ToListAsync(Ct);
    }
}
