using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Notices;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Lifting;

/// <summary>That a lifting chain is to be taken out of use is put off by nobody.</summary>
public sealed class LiftingNoticeStepTests : LiftingPlant
{
    [Fact]
    public async Task That_it_is_to_be_taken_out_of_use_is_not_put_off_and_acknowledged_it_asks_on()
    {
        await FindAsync(found: true);
        var stop = await NoticeAsync(NoticeKind.OutOfUse);
        Assert.True(stop.Urgent);
        var refused = Assert.IsType<IntakeAnswer.Refused>(await StepAsync(stop.Id, NoticeStepKind.Snoozed));
        Assert.Contains("competent person", Assert.Single(refused.Refusals).Reason.ToString(), StringComparison.Ordinal);
        Assert.IsType<IntakeAnswer.Taken>(await StepAsync(stop.Id, NoticeStepKind.Acknowledged));
        Assert.False((await NoticeAsync(NoticeKind.OutOfUse)).IsQuiet(Plant.Clock.GetUtcNow()));
    }

    [Fact]
    public async Task What_was_put_off_before_it_came_to_that_asks_again_at_the_next_review()
    {
        await FindAsync(found: true);
        var stop = await NoticeAsync(NoticeKind.OutOfUse);
        await using (var db = Plant.Db())
        {
            (await db.Notices.SingleAsync(n => n.Id == stop.Id, Ct)).SnoozedUntil = Plant.Clock.GetUtcNow().AddDays(30);
            await db.SaveChangesAsync(Ct);
        }

        await Plant.Review.ReviewAsync(null, null, Ct);
        Assert.Null((await NoticeAsync(NoticeKind.OutOfUse)).SnoozedUntil);
        await using var after = Plant.Db();
        Assert.Equal(NoticeStepKind.Worsened, (await after.NoticeSteps.SingleAsync(s => s.NoticeId == stop.Id, Ct)).Kind);
    }

    private Task<IntakeAnswer?> StepAsync(long id, NoticeStepKind kind) => Plant.Get<NoticeStepDesk>().TakeAsync(
        id, new NewNoticeStep { Kind = kind, Key = $"{kind}", By = "Ina", Until = Today.AddDays(5) }, Ct);

    private async Task<NoticeRow> NoticeAsync(NoticeKind kind)
    {
        await using var db = Plant.Db();
        return await db.Notices.AsNoTracking().SingleAsync(n => n.Kind == kind && n.EndedAt == null, Ct);
    }
}
