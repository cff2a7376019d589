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
}
