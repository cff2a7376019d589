using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>Plans put aside by name, and the plan against what was done.</summary>
public sealed class PlanVersionTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_version_keeps_where_its_swaps_stand_whatever_the_plan_becomes_and_goes_back_on_the_board()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanVersionDesk>();
        var draft = await mill.ProposedAsync();
        Assert.True((await desk.SaveAsync("as proposed", draft, "planner", Ct)).IsEmpty);
        var stood = draft.Windows["D-1"];
        draft.Move("D-1", null);
        await mill.KeepAsync(draft);
        var version = Assert.Single(await desk.AskAsync(Ct));
        var board = await mill.DraftAsync();
        var difference = Assert.Single(PlanVersion.Between(version.Row.Swaps, PlanVersion.SwapsOf(board)));
        Assert.Equal(("D-1", (DateTimeOffset?)null), (difference.Chain, difference.To));
        board.Place(version.PlacesOn(board));
        Assert.Equal(stood, board.Windows["D-1"]);
        Assert.Empty(PlanVersion.Between(version.Row.Swaps, PlanVersion.SwapsOf(board)));
        Assert.Equal(version.Row.Cost, board.Plan.Cost.Total, 6);
    }

    [Fact]
    public async Task A_version_has_a_name_of_its_own_and_is_approved_once()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var (desk, draft) = (mill.Get<PlanVersionDesk>(), await mill.DraftAsync());
        Assert.False((await desk.SaveAsync("  ", draft, "planner", Ct)).IsEmpty);
        Assert.True((await desk.SaveAsync("winter", draft, "planner", Ct)).IsEmpty);
        Assert.False((await desk.SaveAsync(" winter ", draft, "planner", Ct)).IsEmpty);
        var id = Assert.Single(await desk.AskAsync(Ct)).Row.Id;
        Assert.True((await desk.ApproveAsync(id, "manager", Ct)).IsEmpty);
        Assert.False((await desk.ApproveAsync(id, "planner", Ct)).IsEmpty);
        Assert.Equal("manager", (await desk.FindAsync(id, Ct))!.Row.ApprovedBy);
    }

    [Fact]
    public async Task After_a_stop_the_plan_stands_against_what_was_done_and_decisions_have_their_names()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        mill.Pass(TimeSpan.FromDays(60));
        var begun = await mill.Get<AfterStopDesk>().BegunAsync(Ct);
        Assert.True(begun.Count >= 2);
        await mill.Get<AfterStopDesk>().DoneAsync(
            begun[0].Swap.Id,
            new SwapDone(begun[0].Swap.Start!.Value, null, "", false, null, "") { HoursWorked = 5 }, "fitter", Ct);
        await mill.Get<AfterStopDesk>().NotDoneAsync(begun[1].Swap.Id, "no crane", "fitter", Ct);
        var stops = await mill.Get<PlanHistory>().StopsAsync(Ct);
        Assert.Equal(begun.Count, stops.Sum(s => s.Swaps.Count));
        Assert.Equal((1, begun.Count - 2), (stops.Sum(s => s.Done), stops.Sum(s => s.Open)));
        Assert.Equal((begun[1].Chain.Name, "no crane"), stops.SelectMany(s => s.NotDone).Single());
        var worked = stops.Single(s => s.WorkedHours is not null);
        Assert.Equal((5.0, begun[0].Swap.PlannedHours), (worked.WorkedHours!.Value, worked.PlannedHours));
        var decisions = await mill.Get<PlanHistory>().DecisionsAsync(Ct);
        Assert.All(decisions, d => Assert.Equal(("planner", (DateTimeOffset?)null), (d.Swap.DecidedBy, d.Before)));
    }
}
