using WearWatch.Planning.Plans;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>Chains that hold a load, from the forecast to the saved plan: none stands past its hard date.</summary>
public sealed class HeldLoadTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_proposal_keeps_the_date_and_a_move_or_a_lock_past_it_is_refused_with_what_to_do()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 20);
        var draft = await mill.ProposedAsync();
        Assert.InRange(HoistMill.PlaceIn(draft, "D-1"), 0, 1); // shutdowns begin on days 5, 19 and 33
        var (placed, why) = (draft.PlaceOf("D-1"), draft.Move("D-1", HoistMill.WindowOf(draft, 2))?.ToString());
        Assert.StartsWith("D-1 holds a load: out of use from ", why, StringComparison.Ordinal);
        Assert.EndsWith("Choose an earlier one, or take the chain out of use by that day.", why, StringComparison.Ordinal);
        Assert.Equal(placed, draft.PlaceOf("D-1"));
        Assert.Null(draft.Move("D-1", HoistMill.WindowOf(draft, 1 - HoistMill.PlaceIn(draft, "D-1"))));
        Assert.Null(draft.Hold("D-1", SwapPlacing.Locked));
        Assert.Null(draft.Move("D-2", HoistMill.WindowOf(draft, 2))); // no load, no date
    }

    [Fact]
    public async Task A_program_cannot_tell_a_plan_past_the_date()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 20);
        var shown = await mill.DraftAsync();
        foreach (var placing in new[] { null, "by_hand", "locked", "proposed" })
        {
            var told = new PlanEntryJson(shown.Picture.Revision, [new("D-1", HoistMill.WindowOf(shown, 2), placing)]);
            var refusal = Assert.Single(
                Assert.IsType<PlanAnswer.Refused>(await mill.Get<PlanDesk>().SaveAsync(told, "planner", Ct)).Refusals);
            Assert.Equal("swaps[0].shutdown", refusal.Field);
            Assert.StartsWith("D-1 holds a load: out of use from ", refusal.Reason.ToString(), StringComparison.Ordinal);
        }

        Assert.Empty(await mill.SwapsAsync());
    }

    [Fact]
    public async Task Without_a_shutdown_before_the_date_the_plan_says_first_from_when_it_is_out_of_use()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 4);
        var draft = await mill.ProposedAsync();
        var placement = draft.Plan.Placements.Single(p => p.Chain == "D-1");
        Assert.Equal((null, mill.Now.AddDays(4)), (placement.Window, placement.OutOfUseFrom));
        var first = draft.Plan.Remarks[0];
        Assert.Equal((PlanRemarkKind.OutOfUse, "D-1"), (first.Kind, first.Subject));
        var json = PlanJson.Of(draft);
        Assert.Equal(("out_of_use", "D-1"), (json.Remarks[0].Kind, json.Remarks[0].Subject));
        Assert.Equal(mill.Now.AddDays(4), json.Swaps.Single(s => s.Chain == "D-1").OutOfUseFrom);
        Assert.True(json.Cost.OutOfUse > 0);
        Assert.Equal(3, await mill.KeepAsync(draft)); // the other chains have a shutdown
        var kept = (await mill.Get<KeptPlan>().AskAsync(Ct)).Plan;
        Assert.Equal(mill.Now.AddDays(4), kept.Placements.Single(p => p.Chain == "D-1").OutOfUseFrom);
    }

    [Fact]
    public async Task A_plan_that_was_kept_before_a_reading_brought_the_date_nearer_is_told_as_out_of_use_and_placed_anew()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 40);
        var draft = await mill.DraftAsync();
        Assert.Null(draft.Move("D-1", HoistMill.WindowOf(draft, 2)));
        Assert.Null(draft.Hold("D-1", SwapPlacing.Locked));
        await mill.KeepAsync(draft);
        await HoistMill.DateAsync(mill, "D-1", dueInDays: 20);

        Assert.Equal(mill.Now.AddDays(20),
            (await mill.Get<KeptPlan>().AskAsync(Ct)).Plan.Placements.Single(p => p.Chain == "D-1").OutOfUseFrom);
        var again = await mill.DraftAsync();
        Assert.Equal(["D-1"], again.TooLate);
        Assert.Empty(again.Homeless);
        Assert.True(again.IsChanged);
        await again.ProposeAsync(stop: Ct);
        Assert.InRange(HoistMill.PlaceIn(again, "D-1"), 0, 1);
    }

    [Fact]
    public async Task A_board_begun_before_the_date_came_nearer_is_not_kept()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 40);
        var draft = await mill.DraftAsync();
        Assert.Null(draft.Move("D-1", HoistMill.WindowOf(draft, 2)));
        await HoistMill.DateAsync(mill, "D-1", dueInDays: 20);
        var answer = await mill.Get<PlanKeeping>().KeepAsync(draft, "planner", Ct);
        Assert.Contains("D-1 holds a load", Assert.Single(Assert.IsType<PlanAnswer.Refused>(answer).Refusals).Reason.ToString(),
            StringComparison.Ordinal);
        Assert.Empty(await mill.SwapsAsync());
    }

    [Fact]
    public async Task What_was_moved_while_supposing_keeps_the_real_dates_when_the_real_plan_comes_back()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 20);
        var draft = await mill.DraftAsync();
        var late = HoistMill.WindowOf(draft, 2);
        draft.Suppose(new WhatIf(WindowId: late, WindowDays: -20));
        Assert.Null(draft.Move("D-1", late));
        Assert.Equal(late, draft.PlaceOf("D-1").WindowId);
        draft.Suppose(null);
        Assert.Null(draft.PlaceOf("D-1").WindowId);
        draft.Undo();
        Assert.Null(draft.PlaceOf("D-1").WindowId);

        Assert.Null(draft.Move("D-1", HoistMill.WindowOf(draft, 1)));
        draft.Suppose(new WhatIf(WindowId: HoistMill.WindowOf(draft, 1), WindowDays: 14));
        Assert.NotNull(draft.Plan.Placements.Single(p => p.Chain == "D-1").OutOfUseFrom);
        Assert.Contains("holds a load", draft.Hold("D-1", SwapPlacing.Locked)?.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_forecast_made_before_dates_were_kept_gives_its_early_date()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: null);
        var draft = await mill.DraftAsync();
        Assert.Equal(mill.Now.AddHours(0.55 * 500), draft.Board.OutOfUseBy("D-1"));
        Assert.Null(draft.Board.OutOfUseBy("D-2"));
    }
}
