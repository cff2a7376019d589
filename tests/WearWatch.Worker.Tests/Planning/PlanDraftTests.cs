using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

public sealed class PlanDraftTests
{
    [Fact]
    public async Task A_proposal_places_every_chain_that_is_due_and_costs_no_more_than_leaving_them()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var draft = await mill.ProposedAsync();
        Assert.Equal(["D-1", "D-2", "P-1", "P-2"], draft.Plan.Placements.Where(p => p.Window is not null).Select(p => p.Chain));
        Assert.True(draft.Plan.Cost.Total < draft.AsItIs.Cost.Total);
        Assert.NotNull(draft.Proposal);
    }

    [Fact]
    public async Task A_move_can_be_undone_and_a_locked_swap_does_not_move()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var draft = await mill.ProposedAsync();
        var before = draft.PlaceOf("P-1");
        Assert.Null(draft.Move("P-1", null));
        Assert.Equal((null, SwapPlacing.ByHand), (draft.PlaceOf("P-1").WindowId, draft.PlaceOf("P-1").Placing));
        draft.Undo();
        Assert.Equal(before, draft.PlaceOf("P-1"));
        draft.Hold("P-1", SwapPlacing.Locked);
        Assert.Equal("P-1 stays: it is locked.", draft.Move("P-1", null)?.ToString());
    }

    [Fact]
    public async Task A_swap_placed_by_hand_stays_when_a_plan_is_proposed_again()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var draft = await mill.DraftAsync();
        var last = draft.Picture.Input.Windows.Last(w => w.Line == "Debarking").Id;
        draft.Move("D-1", last);
        await draft.ProposeAsync(stop: TestContext.Current.CancellationToken);
        Assert.Equal(last, draft.Plan.Placements.Single(p => p.Chain == "D-1").Window?.Id);
    }

    [Fact]
    public async Task Parallel_strands_move_together()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.Get<PlanInputs>()
            .SaveAsync(new SwapTermsLine("P-1", "", "press drive", null, null, false), TestContext.Current.CancellationToken);
        await mill.Get<PlanInputs>()
            .SaveAsync(new SwapTermsLine("P-2", "", "press drive", null, null, false), TestContext.Current.CancellationToken);
        var draft = await mill.DraftAsync();
        draft.Move("P-2", draft.Picture.Input.Windows.First(w => w.Line == "Press").Id);
        Assert.Equal(draft.PlaceOf("P-2").WindowId, draft.PlaceOf("P-1").WindowId);
    }

    [Fact]
    public async Task What_if_changes_the_board_and_not_the_plan_that_is_kept()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var draft = await mill.DraftAsync();
        var real = draft.Plan.Cost.Total;
        draft.Suppose(new WhatIf(CrewPercent: 0));
        Assert.True(draft.Plan.Cost.Overtime > 0);
        draft.Suppose(null);
        Assert.Equal(real, draft.Plan.Cost.Total, 6);
        Assert.False(draft.IsChanged);
    }

    [Fact]
    public async Task A_swap_whose_shutdown_is_gone_is_named_and_has_to_be_placed_anew()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var inputs = await mill.Get<PlanInputs>().AskAsync(TestContext.Current.CancellationToken);
        await mill.Get<PlanInputs>()
            .RemoveRuleAsync(inputs.Rules.Single(r => r.Line == "Press").Id, TestContext.Current.CancellationToken);
        Assert.Equal(["P-1", "P-2"], (await mill.DraftAsync()).Homeless);
    }
}
