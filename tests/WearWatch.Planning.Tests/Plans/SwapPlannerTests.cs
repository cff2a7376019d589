using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Tests.Plans;

public sealed class SwapPlannerTests
{
    private static Task<SwapPlan> Propose(PlanInput input) =>
        SwapPlanner.ProposeAsync(input, A.ToTheEnd, null, TestContext.Current.CancellationToken);

    private static string? WindowOf(SwapPlan plan, string chain) => plan.Placements.Single(p => p.Chain == chain).Window?.Id;

    [Fact]
    public async Task A_chain_that_surely_reaches_its_limit_in_six_weeks_is_swapped_in_the_last_shutdown_before()
    {
        var swap = A.Swap(forecast: A.Certain(42 * 24 - 1));
        var plan = await Propose(A.Input([swap], [A.Window(7), A.Window(21), A.Window(35), A.Window(49)]));
        Assert.Equal("L1/35", WindowOf(plan, "C1"));
    }

    [Fact]
    public async Task The_same_input_gives_the_same_plan()
    {
        var input = A.SmallPlant(3, chains: 20, lines: 4, windows: 6);
        var (one, other) =
            (await SwapPlanner.ProposeAsync(input, PlannerEffort.Usual, null, TestContext.Current.CancellationToken),
            await SwapPlanner.ProposeAsync(input with
            {
                Tasks = [.. input.Tasks.Reverse()],
                Windows = [.. input.Windows.Reverse()],
            }, PlannerEffort.Usual, null, TestContext.Current.CancellationToken));
        Assert.True(one.SearchEnded && other.SearchEnded);
        Assert.Equal(one.Placements, other.Placements);
        Assert.Equal(one.Cost, other.Cost);
    }

    [Fact]
    public async Task A_time_limit_ends_the_proof_and_changes_no_plan()
    {
        var input = A.SmallPlant(4, chains: 24, lines: 3, windows: 8);
        var hasty = new PlannerEffort(0, TimeSpan.FromMilliseconds(1));
        var (one, other) = (await SwapPlanner.ProposeAsync(input, hasty, null, TestContext.Current.CancellationToken),
            await SwapPlanner.ProposeAsync(input, hasty, null, TestContext.Current.CancellationToken));
        Assert.False(one.SearchEnded);
        Assert.Equal(one.Placements, other.Placements);
        var proven = await Propose(input);
        Assert.True(proven.SearchEnded);
        // the walks alone keep the bar that is set for the whole
        Assert.InRange(one.Cost.Total, proven.Cost.Total, 1.015 * proven.Cost.Total);
    }

    [Fact]
    public async Task Two_swaps_of_a_line_share_one_stop()
    {
        // Each has its own best shutdown a fortnight from the other's; a dear stop draws them into one.
        PlanInput With(double stopHours) => A.Input(
            [A.Swap("C1", forecast: A.Certain(15 * 24), sprockets: 0), A.Swap("C2", forecast: A.Certain(29 * 24), sprockets: 0)],
            [A.Window(14), A.Window(28)]) with
        { Costs = new PlanningCosts { StopHours = stopHours } };
        Assert.Equal(["L1/14", "L1/28"], (await Propose(With(0))).Placements.Select(p => p.Window?.Id));
        var shared = await Propose(With(2));
        Assert.Single(shared.Placements.Select(p => p.Window?.Id).Distinct());
        Assert.Equal(800, shared.Cost.Stops);
    }

    [Fact]
    public async Task Parallel_strands_are_swapped_together()
    {
        var plan = await Propose(A.Input(
            [A.Swap("C1", forecast: A.Certain(15 * 24), group: "drive"),
                A.Swap("C2", forecast: A.Certain(50 * 24), group: "drive")],
            [A.Window(14), A.Window(28), A.Window(42)]));
        Assert.Equal(WindowOf(plan, "C1"), WindowOf(plan, "C2"));
    }

    [Fact]
    public async Task A_swap_kept_by_hand_stays_though_it_costs_more()
    {
        var input = A.Input([A.Swap(forecast: A.Certain(30 * 24))], [A.Window(7), A.Window(28)]);
        var (free, kept) =
            (await Propose(input), await Propose(input with { Kept = new Dictionary<string, string?> { ["C1"] = "L1/07" } }));
        Assert.Equal("L1/28", WindowOf(free, "C1"));
        Assert.Equal("L1/07", WindowOf(kept, "C1"));
        Assert.True(kept.Cost.Total > free.Cost.Total);
    }

    [Fact]
    public async Task Crew_hours_cut_to_sixty_percent_still_give_a_plan_that_shows_the_overload()
    {
        var input = A.SmallPlant(2, chains: 14) with { Costs = new PlanningCosts { OvertimePerHour = 20 } };
        var cut = input with { Windows = [.. input.Windows.Select(w => w with { CrewHours = 0.6 * w.CrewHours })] };
        var (full, tight) = (await Propose(input), await Propose(cut));
        Assert.Equal(14, tight.Placements.Count);
        var overload = tight.Remarks.Where(r => r.Kind == PlanRemarkKind.CrewOverloaded).ToArray();
        Assert.NotEmpty(overload);
        Assert.Equal(tight.Cost.Overtime, 20 * overload.Sum(r => r.Amount), 6);
        Assert.True(tight.Cost.Total > full.Cost.Total);
    }

    [Fact]
    public async Task A_swap_waits_for_its_delivery_when_haste_costs_more_than_the_risk()
    {
        var input = A.Input(
            [A.Swap(median: 14 * 24, spread: 0.5, needs: [new PartNeed(A.Chain16B, 100)])], [A.Window(7), A.Window(14)]) with
        {
            Spares = [new Spare
            {
                Part = A.Chain16B,
                OnOrder = [new Delivery(A.Monday.AddDays(10), 160)],
                Price = 30,
                LeadTime = TimeSpan.FromDays(60),
            }],
        };
        Assert.Equal("L1/14", WindowOf(await Propose(input), "C1"));
        var hasty = await Propose(input with { Kept = new Dictionary<string, string?> { ["C1"] = "L1/07" } });
        Assert.Equal(0.75 * 30 * 100, hasty.Cost.Express);
        Assert.Contains(hasty.Remarks, r => r.Kind == PlanRemarkKind.PartShort && r.Amount == 100);
    }

    [Fact]
    public async Task A_swap_longer_than_its_shutdown_pays_for_the_line_that_waits()
    {
        var plan = await Propose(
            A.Input([A.Swap(hours: 11, forecast: A.Certain(15 * 24), sprockets: 0)], [A.Window(14, length: 8)]) with
            { Kept = new Dictionary<string, string?> { ["C1"] = "L1/14" } });
        Assert.Equal(3 * 400, plan.Cost.Overruns, 6);
        Assert.Contains(plan.Remarks, r => r.Kind == PlanRemarkKind.WindowTooShort && Math.Abs(r.Amount - 3) < 1e-9);
    }

    [Fact]
    public async Task A_chain_on_a_line_without_a_shutdown_is_left_and_the_plan_says_so()
    {
        var plan = await Propose(A.Input([A.Swap(line: "L9", median: 200)], [A.Window(14)]));
        var left = Assert.Single(plan.Remarks);
        Assert.Equal(
            (PlanRemarkKind.ChainLeft, "C1", "A planned shutdown of line L9."),
            (left.Kind, left.Subject, left.WhatWouldHelp.ToString()));
    }

    [Fact]
    public async Task A_swap_kept_in_a_shutdown_that_is_gone_is_placed_anew_and_named()
    {
        var plan = await Propose(A.Input([A.Swap(forecast: A.Certain(15 * 24))], [A.Window(14)]) with
        {
            Kept = new Dictionary<string, string?> { ["C1"] = "L1/99" },
        });
        Assert.Equal("L1/14", WindowOf(plan, "C1"));
        Assert.Contains(plan.Remarks, r => r.Kind == PlanRemarkKind.PlaceGone && r.Subject == "C1");
    }

    [Fact]
    public void A_chain_not_placed_yet_is_named_with_the_shutdown_that_would_be_cheaper()
    {
        var board = new SwapCosting(A.Input([A.Swap(forecast: A.Certain(15 * 24))], [A.Window(7), A.Window(14)]));
        var left = Assert.Single(board.Count(new Dictionary<string, string?>()).Remarks);
        Assert.StartsWith("Place it in the shutdown of 16 Mar 2026", left.WhatWouldHelp.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_to_swap_costs_nothing()
    {
        var plan = await Propose(A.Input([], [A.Window(14)]));
        Assert.Equal((0.0, 0.0), (plan.Cost.Total, plan.Gap));
    }

    [Fact]
    public async Task It_never_costs_more_than_earliest_due_date()
    {
        foreach (var seed in Enumerable.Range(20, 10))
        {
            var input = A.SmallPlant(seed, chains: 12, lines: 3, windows: 4);
            var plan = await SwapPlanner.ProposeAsync(input, PlannerEffort.Usual, null, TestContext.Current.CancellationToken);
            Assert.True(plan.Cost.Total <= SwapPlanner.ByEarliestDueDate(input).Cost.Total + 1e-6);
            Assert.InRange(plan.Gap, 0, 0.0101);
        }
    }

    [Fact]
    public async Task A_cancelled_search_ends_at_once()
    {
        using var cancel = new CancellationTokenSource();
        await cancel.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            SwapPlanner.ProposeAsync(A.SmallPlant(1), A.ToTheEnd, null, cancel.Token));
    }

    [Fact]
    public void What_a_move_costs_is_the_difference_of_two_counts()
    {
        var input = A.SmallPlant(4);
        var before = new SwapCosting(input).Count(new Dictionary<string, string?>());
        var after = new SwapCosting(input).Count(new Dictionary<string, string?> { ["C1"] = "L2/14" });
        Assert.Null(WindowOf(before, "C1"));
        Assert.Equal("L2/14", WindowOf(after, "C1"));
        Assert.NotEqual(before.Cost.Total, after.Cost.Total);
    }
}
