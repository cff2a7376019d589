using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>A proposal can be carried out: parts arrive, prepared work stays, and no chain is swapped unmeasured.</summary>
public sealed class PreparationTests
{
    private static readonly Spare None = new()
    {
        Part = A.Chain16B,
        LeadTime = TimeSpan.FromDays(60),
        ExpressLeadTime = TimeSpan.FromDays(10),
        Price = 1,
    };

    // Oracle: of all placings of a small plant, those are struck out that need parts before an express order arrives, that
    // change what is frozen, or that swap a chain nobody measured; the cheapest of the rest is what the planner must find.
    [Theory]
    [InlineData(21)]
    [InlineData(22)]
    [InlineData(23)]
    [InlineData(24)]
    [InlineData(25)]
    [InlineData(26)]
    [InlineData(27)]
    [InlineData(28)]
    public async Task The_planner_finds_the_cheapest_of_all_plans_that_can_be_carried_out(int seed)
    {
        var small = A.SmallPlant(seed);
        var input = small with
        {
            FrozenUntil = A.Monday.AddDays(seed % 2 == 0 ? 15 : 3),
            Tasks = [.. small.Tasks.Select(t => t with { MeasureFirst = t.Chain == "C6" })],
            Spares = [.. small.Spares.Select(s => s with { InStock = 140, ExpressLeadTime = TimeSpan.FromDays(30) })],
        };
        var plan = await Propose(input);
        var (cheapest, _) = EveryPlan.CheapestOf(input, way => CanBeCarriedOut(input, way));
        Assert.True(CanBeCarriedOut(input, plan.Placements.ToDictionary(p => p.Chain, p => p.Window?.Id)));
        Assert.Equal(cheapest, plan.Cost.Total, 0.005);
        Assert.InRange(plan.Bound, 0, cheapest + 0.005);
    }

    [Fact]
    public async Task A_swap_waits_until_an_express_order_can_bring_its_parts()
    {
        var input = Plant(None);
        Assert.Equal("L1/14", (await Propose(input)).Placements.Single().Window?.Id);
        Assert.Equal("L1/01", (await Propose(Plant(None with { InStock = 100 }))).Placements.Single().Window?.Id);
    }

    [Fact]
    public void Placed_by_hand_where_no_part_can_come_it_stands_and_the_plan_says_so()
    {
        var plan = new SwapCosting(Plant(None)).Count(new Dictionary<string, string?> { ["C1"] = "L1/07" });
        var remark = Assert.Single(plan.Remarks, r => r.Kind == PlanRemarkKind.PartsCannotCome);
        Assert.Equal((100, A.Monday.AddDays(10)), (remark.Amount, remark.At));
        Assert.Equal(PlanRemarkKind.PartsCannotCome, plan.Remarks[0].Kind);
    }

    [Fact]
    public void Each_shutdown_says_why_no_proposal_uses_it()
    {
        var board = new SwapCosting(Plant(None) with { FrozenUntil = A.Monday.AddDays(2) });
        var moves = board.MovesOf("C1", new Dictionary<string, string?>());
        Assert.Equal(
            ["Its work is prepared. Proposals leave it as it is until 4 Mar 2026.",
                "chain 16B-1 cannot come in time, not even by express: ordered today it arrives on 12 Mar 2026.", null, null],
            moves.Select(m => m.WhyNotProposed?.ToString()));
    }

    [Fact]
    public async Task What_stands_in_a_frozen_shutdown_stays_there()
    {
        var frozen = Plant(None with { InStock = 100 }) with
        {
            FrozenUntil = A.Monday.AddDays(8),
            Kept = new Dictionary<string, string?> { ["C1"] = "L1/01" },
        };
        Assert.Equal("L1/01", (await Propose(frozen)).Placements.Single().Window?.Id);
        Assert.Equal(
            "L1/14", (await Propose(frozen with { Kept = new Dictionary<string, string?>() })).Placements.Single().Window?.Id);
    }

    [Fact]
    public async Task A_chain_that_nobody_measured_is_to_be_measured_and_not_swapped()
    {
        var plant = Plant(None with { InStock = 100 });
        var plan = await Propose(plant with { Tasks = [.. plant.Tasks.Select(t => t with { MeasureFirst = true })] });
        Assert.Null(plan.Placements.Single().Window);
        var remark = Assert.Single(plan.Remarks);
        Assert.Equal((PlanRemarkKind.MeasureFirst, "C1"), (remark.Kind, remark.Subject));
    }

    [Fact]
    public void Haste_never_takes_longer_than_an_ordinary_order() =>
        Assert.Equal(
            TimeSpan.FromDays(2), (None with { LeadTime = TimeSpan.FromDays(2) }).ExpressLeadTime);

    private static PlanInput Plant(Spare spare) => A.Input(
        [A.Swap(median: 5 * 24, spread: 0.2, needs: [new PartNeed(A.Chain16B, 100)])], [A.Window(1), A.Window(7), A.Window(14)])
        with
    { Spares = [spare], Costs = new PlanningCosts { StopHours = 0.1 } };

    private static bool CanBeCarriedOut(PlanInput input, IReadOnlyDictionary<string, string?> way)
    {
        var placed = input.Tasks.Where(t => way[t.Chain] is not null)
            .Select(t => (Task: t, input.Windows.Single(w => w.Id == way[t.Chain]).Start)).ToArray();
        return placed.All(p => p.Start >= input.FrozenUntil && !p.Task.MeasureFirst)
            && input.Spares.All(s => placed.Where(p => p.Start < input.Now + s.ExpressLeadTime)
                .All(p => placed.Where(q => q.Start <= p.Start).SelectMany(q => q.Task.Needs).Where(n => n.Part == s.Part)
                    .Sum(n => n.Quantity) <= s.AvailableAt(p.Start)));
    }

    private static Task<SwapPlan> Propose(PlanInput input) =>
        SwapPlanner.ProposeAsync(input, A.ToTheEnd, null, TestContext.Current.CancellationToken);
}
