using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

public sealed class PlanKeepingTests
{
    [Fact]
    public async Task A_plan_that_is_kept_stands_when_it_is_asked_for_again_and_keeping_it_twice_changes_nothing()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var draft = await mill.ProposedAsync();
        Assert.Equal(4, await mill.KeepAsync(draft));
        var again = await mill.DraftAsync();
        Assert.Equal(draft.Windows.OrderBy(w => w.Key), again.Windows.OrderBy(w => w.Key));
        Assert.Equal(0, await mill.KeepAsync(again));
        Assert.Equal(4, (await mill.SwapsAsync()).Count);
    }

    [Fact]
    public async Task A_changed_decision_is_a_new_row_with_its_note_and_the_old_one_stays_as_replaced()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var draft = await mill.DraftAsync();
        draft.Move("D-1", null);
        draft.Annotate("D-1", "wait for the new sprocket");
        await mill.KeepAsync(draft);
        var rows = await mill.SwapsAsync();
        Assert.Equal(SwapEnd.Replaced, rows[0].Outcome);
        Assert.Equal(
            (SwapEnd.Planned, SwapPlacing.ByHand, "wait for the new sprocket", "planner"),
            (rows[^1].Outcome, rows[^1].Placing, rows[^1].Note, rows[^1].DecidedBy));
    }

    [Fact]
    public async Task A_swap_that_was_done_starts_a_new_life_and_leaves_the_plan()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var swap = (await mill.SwapsAsync())[0];
        var told = new SwapDone(mill.Now, null, "B-2", Broke: true, TakeUpMm: 12, "fine") { NewPitches = 118 };
        var answer = await mill.Get<PlanKeeping>().DoneAsync(swap.Id, told, "fitter", TestContext.Current.CancellationToken);
        Assert.IsType<IntakeAnswer.Taken>(answer);
        await using var db = mill.Db();
        var happened = Assert.Single(await db.StandingEventsAsync(swap.ChainId, TestContext.Current.CancellationToken));
        Assert.Equal((ChainEventKind.Replacement, "B-2", true, 118, 12, "fine", "fitter"),
            (happened.Kind, happened.Lot, happened.Broke, happened.NewPitches, happened.TakeUpMm, happened.Note,
                happened.ToldBy));
        Assert.Equal(SwapEnd.Done, (await mill.SwapsAsync())[0].Outcome);
        // Told twice, it is one event.
        await mill.Get<PlanKeeping>().DoneAsync(swap.Id, told, "fitter", TestContext.Current.CancellationToken);
        Assert.Single(await db.StandingEventsAsync(swap.ChainId, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_swap_that_was_not_done_comes_back_into_the_next_plan()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var first = (await mill.SwapsAsync())[0].Id;
        await mill.Get<PlanKeeping>()
            .NotDoneAsync(first, "chain did not come", "fitter", TestContext.Current.CancellationToken);
        var draft = await mill.DraftAsync();
        Assert.Equal(DraftPlace.Nowhere, draft.PlaceOf("D-1"));
        Assert.Contains("D-1", draft.Picture.Faces.Keys);
    }
}
