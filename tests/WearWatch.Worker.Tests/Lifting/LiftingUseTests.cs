using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Lifting;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Lifting;

public sealed class LiftingUseTests : LiftingPlant
{
    [Fact]
    public async Task A_chain_that_lifts_says_from_its_first_moment_that_it_was_never_examined_and_has_no_certificate()
    {
        var state = await StateAsync();
        Assert.Equal(
            [LiftingFaultKind.NeverExamined, LiftingFaultKind.NoCertificate, LiftingFaultKind.WearNotKnown],
            state.On(Today).Select(f => f.Kind));
        Assert.Equal([NoticeKind.ExaminationDue, NoticeKind.PapersMissing], await NoticesAsync());
    }

    [Fact]
    public async Task An_examination_day_from_the_finding_to_the_release()
    {
        await AppointAsync();
        Taken(await EnterAsync(Card()));
        Taken(await ExamineAsync(Nothing));
        Assert.Empty(await NoticesAsync());
        Assert.Equal(Today.AddMonths(12), (await StateAsync()).ExaminationDue); // LOLER 1998 reg. 9(3)(a)(ii)

        Taken(await FindAsync(found: true));
        Assert.Equal([NoticeKind.OutOfUse], await NoticesAsync());
        // A look that finds it in order, or a quarantine and its own release without the finding, brings nothing back.
        Taken(await FindAsync(found: false));
        Taken(await StepAsync(LiftingStepKind.Quarantined, "Ina"));
        Assert.Equal(["closes"], Fields(await StepAsync(LiftingStepKind.Released, "Ola")));
        Assert.Equal([NoticeKind.OutOfUse], await NoticesAsync());

        Taken(await StepAsync(LiftingStepKind.Released, "Ola", InspectionPoint.CrackedOrTurnedParts));
        Assert.Empty(await NoticesAsync());
        await using var db = Plant.Db();
        var release = await db.LiftingSteps.OrderByDescending(s => s.Id).FirstAsync(Ct);
        Assert.Equal(("Ola", "looked at it", 1), (release.By, release.Reason, release.Closes.Count));
        Assert.NotNull(release.AppointmentId);
    }

    [Fact]
    public async Task Nobody_releases_without_an_appointment_that_holds_today_for_this_chain()
    {
        Taken(await FindAsync(found: true));
        Assert.Equal(["by"], Fields(await ReleaseAsync("Ola")));
        await AppointAsync(line: "Yard");
        Assert.Equal(["by"], Fields(await ReleaseAsync("Ola")));
        var id = await AppointAsync();
        Assert.Equal(["by"], Fields(await ReleaseAsync("Vera")));
        Taken(await Plant.Get<AppointmentDesk>().EndAsync((int)id, "the head", "left the plant", Ct));
        Assert.Equal(["by"], Fields(await ReleaseAsync("Ola")));
        await AppointAsync(until: Today.AddDays(10));
        Plant.Clock.Advance(TimeSpan.FromDays(11));
        Assert.Equal(["by"], Fields(await ReleaseAsync("Ola")));
        await AppointAsync(until: Today.AddYears(1));
        Taken(await ReleaseAsync("Ola"));
    }

    [Fact]
    public async Task Nobody_appoints_himself_and_no_appointment_holds_for_ever()
    {
        Assert.Equal(["appointed_by"], Fields(await AppointAnswerAsync(by: "ola")));
        Assert.Equal(["until"], Fields(await AppointAnswerAsync(until: Today.AddYears(6))));
    }

    [Fact]
    public async Task A_chain_that_is_not_out_of_use_cannot_be_released()
    {
        await AppointAsync();
        Assert.Equal(["chain"], Fields(await StepAsync(LiftingStepKind.Released, "Ola")));
    }

    [Fact]
    public async Task What_was_discarded_stays_so()
    {
        await AppointAsync();
        Taken(await StepAsync(LiftingStepKind.Disposed, "Vera"));
        Assert.Equal(LiftingStanding.Disposed, (await StateAsync()).Standing);
        Assert.Contains("chain", Fields(await StepAsync(LiftingStepKind.Released, "Ola")));
        Assert.Contains("chain", Fields(await StepAsync(LiftingStepKind.Quarantined, "Ina")));
    }

    [Fact]
    public async Task What_is_sent_twice_is_kept_once()
    {
        var step = new NewLiftingStep("once", Name, LiftingStepKind.Quarantined, "Ina", "dropped a load", []);
        var desk = Plant.Get<LiftingUseDesk>();
        Assert.Equal(Taken(await desk.TakeAsync(step, Ct)), Taken(await desk.TakeAsync(step, Ct)));
        Assert.Equal(["key"], Fields(await desk.TakeAsync(step with { Kind = LiftingStepKind.Disposed }, Ct)));
    }

    [Fact]
    public async Task A_chain_that_holds_no_load_has_no_entry_here()
    {
        await Plant.AddChainAsync("C1");
        Assert.Equal(["chain"], Fields(await Plant.Get<LiftingUseDesk>().TakeAsync(
            new NewLiftingStep("k", "C1", LiftingStepKind.Quarantined, "Ina", "why", []), Ct)));
    }
}
