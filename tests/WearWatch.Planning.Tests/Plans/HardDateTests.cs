using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>Chains that hold a load: what a plan does and says about their hard dates.</summary>
public sealed class HardDateTests
{
    private static async Task<SwapPlan> Propose(PlanInput input) =>
        await SwapPlanner.ProposeAsync(input, A.ToTheEnd, null, TestContext.Current.CancellationToken);

    private static PlanRemark OutOfUse(SwapPlan plan)
    {
        Assert.Equal(PlanRemarkKind.OutOfUse, plan.Remarks[0].Kind);
        Assert.NotNull(plan.Placements.Single(p => p.Chain == plan.Remarks[0].Subject).OutOfUseFrom);
        return plan.Remarks[0];
    }

    [Fact]
    public async Task The_date_goes_before_the_forecast_and_before_money()
    {
        // Its limit is a year off and the chain is dear: without a date nobody would swap it.
        PlanInput With(double? day) => A.Input(
            [A.Swap(price: 100_000, forecast: A.Certain(365 * 24), outOfUseByDay: day)], [A.Window(14), A.Window(28)]);
        Assert.Null((await Propose(With(null))).Placements[0].Window);
        Assert.Equal("L1/14", (await Propose(With(20))).Placements[0].Window?.Id);
        Assert.Equal("L1/28", (await Propose(With(28))).Placements[0].Window?.Id); // beginning at the very moment keeps it
    }

    [Fact]
    public async Task Without_a_shutdown_before_the_date_it_is_out_of_use_from_that_day_and_its_stop_is_counted_once()
    {
        var plan = await Propose(A.Input([A.Swap(outOfUseByDay: 10)], [A.Window(14)]));
        Assert.Equal((null, A.Monday.AddDays(10)), (plan.Placements[0].Window, plan.Placements[0].OutOfUseFrom));
        Assert.Equal(
            "It holds a load. Out of use from 12 Mar 2026: no shutdown of line L1 begins by that day.",
            OutOfUse(plan).Why.ToString());
        Assert.Equal(new PlanningCosts().BreakdownOf("L1"), plan.Cost.OutOfUse);
        Assert.InRange(plan.Cost.Breakdowns, 0, 5); // it does not run on from there
    }

    [Fact]
    public async Task A_date_that_has_passed_is_told_as_now()
    {
        var remark = OutOfUse(await Propose(A.Input([A.Swap(outOfUseByDay: -3)], [A.Window(14)])));
        Assert.StartsWith(
            "It holds a load. Take it out of use now, its day was 27 Feb 2026:", remark.Why.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 16, 0, "it lasts 1 h and the swap takes 2 h")]
    [InlineData(8, 1, 0, "has 1 h and the swap takes 2 h of work")]
    [InlineData(8, 16, 120, "120 pitches of chain 16B-1 are not there by then without haste")]
    public async Task A_shutdown_that_lacks_something_is_no_promise_and_a_person_who_arranged_it_may_use_it(
        double length, double crewHours, int pitches, string lacks)
    {
        var input = A.Input(
            [A.Swap(outOfUseByDay: 20, needs: [new PartNeed(A.Chain16B, pitches)])],
            [A.Window(14, crewHours: crewHours, length: length)]) with
        {
            Spares = [new Spare { Part = A.Chain16B, LeadTime = TimeSpan.FromDays(60), Price = 1 }],
        };
        Assert.Contains(lacks, OutOfUse(await Propose(input)).Why.ToString(), StringComparison.Ordinal);

        var byHand = new SwapCosting(input).Count(new Dictionary<string, string?> { ["C1"] = "L1/14" });
        Assert.Equal("L1/14", byHand.Placements[0].Window?.Id);
        Assert.Equal(PlanRemarkKind.HardDateUnsure, byHand.Remarks[0].Kind);
        Assert.Contains(lacks, byHand.Remarks[0].Why.ToString(), StringComparison.Ordinal);
        Assert.Equal("Arrange it, or the chain is out of use from 22 Mar 2026.", byHand.Remarks[0].WhatWouldHelp.ToString());
    }

    [Fact]
    public async Task Swaps_that_fit_one_by_one_and_not_together_are_planned_and_told_as_not_sure()
    {
        var plan = await Propose(A.Input(
            [A.Swap("C1", hours: 4, outOfUseByDay: 20), A.Swap("C2", hours: 4, outOfUseByDay: 20)],
            [A.Window(14, crewHours: 6)]));
        Assert.All(plan.Placements, p => Assert.Equal("L1/14", p.Window?.Id));
        Assert.Equal(["C1", "C2"], plan.Remarks.Where(r => r.Kind == PlanRemarkKind.HardDateUnsure).Select(r => r.Subject));
        Assert.Contains("has 6 h for 8 h of work", plan.Remarks[0].Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_swap_kept_past_the_date_is_placed_before_it_and_named()
    {
        var plan = await Propose(A.Input([A.Swap(outOfUseByDay: 20)], [A.Window(14), A.Window(28)]) with
        {
            Kept = new Dictionary<string, string?> { ["C1"] = "L1/28" },
        });
        Assert.Equal("L1/14", plan.Placements[0].Window?.Id);
        var gone = Assert.Single(plan.Remarks, r => r.Kind == PlanRemarkKind.PlaceGone);
        Assert.Contains("begins after 22 Mar 2026, when it must be out of use", gone.Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_chain_kept_without_a_shutdown_by_hand_is_out_of_use_from_its_date()
    {
        var input = A.Input([A.Swap(outOfUseByDay: 20)], [A.Window(14)]) with
        {
            Kept = new Dictionary<string, string?> { ["C1"] = null },
        };
        Assert.EndsWith(
            "a person keeps it out of the shutdowns.", OutOfUse(await Propose(input)).Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_date_after_the_next_chance_asks_for_nothing_yet()
    {
        // The horizon ends after 84 days, and the next chance is 28 days later.
        var plan = await Propose(A.Input([A.Swap(forecast: A.Certain(365 * 24), outOfUseByDay: 113)], [A.Window(14)]));
        Assert.Equal((null, null, 0), (plan.Placements[0].Window, plan.Placements[0].OutOfUseFrom, plan.Cost.OutOfUse));
        Assert.NotNull((await Propose(A.Input([A.Swap(forecast: A.Certain(365 * 24), outOfUseByDay: 112)], [A.Window(14)])))
            .Placements[0].Window);
    }

    [Fact]
    public async Task A_set_goes_by_the_date_of_its_first()
    {
        var plan = await Propose(A.Input(
            [A.Swap("C1", group: "mast", outOfUseByDay: 40), A.Swap("C2", group: "mast", outOfUseByDay: 20)],
            [A.Window(14), A.Window(28)]));
        Assert.Equal(["L1/14", "L1/14"], plan.Placements.Select(p => p.Window?.Id));
        var none = await Propose(A.Input(
            [A.Swap("C1", group: "mast"), A.Swap("C2", group: "mast", outOfUseByDay: 10)], [A.Window(14), A.Window(28)]));
        Assert.Equal(["C1", "C2"], none.Remarks.TakeWhile(r => r.Kind == PlanRemarkKind.OutOfUse).Select(r => r.Subject));
    }

    [Fact]
    public void The_parts_of_a_chain_that_is_out_of_use_are_ordered_for_that_day()
    {
        var input = A.Input([A.Swap(outOfUseByDay: 10, needs: [new PartNeed(A.Chain16B, 100)])], [A.Window(14)]);
        var order = Assert.Single(OrderList.For(input, new SwapCosting(input).Count(new Dictionary<string, string?>())));
        Assert.Equal((100, A.Monday.AddDays(10)), (order.Quantity, order.NeededBy));
        var late = A.Input([A.Swap(outOfUseByDay: -10, needs: [new PartNeed(A.Chain16B, 100)])], [A.Window(14)]);
        Assert.Equal(A.Monday, OrderList.For(late, new SwapCosting(late).Count(new Dictionary<string, string?>()))[0].NeededBy);
    }

    [Fact]
    public void What_cannot_be_planned_is_said_first_all_the_same()
    {
        var plan = new SwapCosting(A.Input([A.Swap(median: 200)], [A.Window(14)]) with
        {
            LoadWarnings =
            [
                new LoadWarning("H2", "L1", LoadWarningKind.CannotBeJudged),
                new LoadWarning("H1", "L1", LoadWarningKind.SwapBegun, A.Monday.AddDays(3), A.Monday.AddDays(-1)),
                new LoadWarning("H3", "L1", LoadWarningKind.SwapBegun, A.Monday.AddDays(300), A.Monday.AddDays(-1)),
                new LoadWarning("H4", "L1", LoadWarningKind.TakenOut),
            ],
        }).Count(new Dictionary<string, string?>());
        Assert.Equal(
            [(PlanRemarkKind.OutOfUse, "H1"), (PlanRemarkKind.OutOfUse, "H4"), (PlanRemarkKind.CannotBeJudged, "H2"),
                (PlanRemarkKind.ChainLeft, "C1")],
            plan.Remarks.Select(r => (r.Kind, r.Subject)));
    }
}
