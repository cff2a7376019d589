using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>1,000 plants drawn from seeds: no plan leaves a chain that holds a load in use past its hard date.</summary>
public sealed class HardDateBruteForceTests
{
    private const int Plants = 1000;

    // Oracle: the rule told once more in RandomHoists, from the input alone. A chain that a person has not placed is out of use
    // exactly when no shutdown before its date fits.
    [Fact]
    public async Task No_proposal_leaves_a_chain_that_holds_a_load_in_use_past_its_date()
    {
        var (planned, outOfUse) = (0, 0);
        for (var seed = 1; seed <= Plants; seed++)
        {
            var input = RandomHoists.Plant(seed);
            var plan = await SwapPlanner.ProposeAsync(
                input, PlannerEffort.Usual, null, TestContext.Current.CancellationToken);
            AssertKeepsEveryDate(input, plan);
            foreach (var placement in plan.Placements)
            {
                var set = RandomHoists.SetOf(input, placement.Chain);
                if (set.Min(t => t.OutOfUseBy) is not { } by || by > input.HorizonEnd + input.Costs.NextChance) continue;
                (planned, outOfUse) = placement.Window is null ? (planned, outOfUse + 1) : (planned + 1, outOfUse);
                if (set.Any(t => input.Kept.ContainsKey(t.Chain))) continue;
                Assert.Equal(RandomHoists.Fitting(input, set, by).Length > 0, placement.Window is not null);
            }
        }

        Assert.InRange(planned, 300, 3000); // both ways are met often
        Assert.InRange(outOfUse, 300, 3000);
    }

    [Fact]
    public void No_placing_by_hand_and_no_plan_by_due_date_leaves_one_in_use_past_its_date()
    {
        for (var seed = 1; seed <= Plants; seed++)
        {
            var (input, dice) = (RandomHoists.Plant(seed), new Random(seed));
            AssertKeepsEveryDate(input, SwapPlanner.ByEarliestDueDate(input));
            var board = new SwapCosting(input);
            for (var i = 0; i < 10; i++)
            {
                var moves = RandomHoists.AnyMoves(input, dice);
                AssertKeepsEveryDate(input, board.Count(moves));
                Assert.All(input.Tasks.SelectMany(t => board.MovesOf(t.Chain, moves).Select(m => (t.Chain, m.Window))),
                    m => Assert.False(m.Window is { } w && board.IsTooLate(m.Chain, w.Id)));
            }
        }
    }

    // Oracle: every placing that the rule admits, counted one by one.
    [Fact]
    public async Task Among_the_plans_that_keep_the_dates_the_cheapest_is_found()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var input = RandomHoists.Plant(seed) with { Kept = new Dictionary<string, string?>() };
            var plan = await SwapPlanner.ProposeAsync(input, A.ToTheEnd, null, TestContext.Current.CancellationToken);
            var (cheapest, _) = EveryPlan.CheapestOf(input);
            Assert.Equal(cheapest, plan.Cost.Total, 0.005);
            Assert.InRange(plan.Bound, 0, cheapest + 0.005);
        }
    }

    private static void AssertKeepsEveryDate(PlanInput input, SwapPlan plan)
    {
        Assert.Equal(input.Tasks.Select(t => t.Chain).Order(StringComparer.Ordinal), plan.Placements.Select(p => p.Chain));
        var told = plan.Remarks.TakeWhile(r => r.Kind == PlanRemarkKind.OutOfUse).Select(r => (r.Subject, r.At)).ToArray();
        foreach (var placement in plan.Placements)
        {
            var by = RandomHoists.SetOf(input, placement.Chain).Min(t => t.OutOfUseBy);
            if (placement.Window is { } window)
            {
                Assert.True(by is null || window.Start <= by);
                Assert.Null(placement.OutOfUseFrom);
            }
            else if (by <= input.HorizonEnd + input.Costs.NextChance)
            {
                Assert.Equal(by, placement.OutOfUseFrom);
                Assert.Contains((placement.Chain, by), told);
            }
            else
            {
                Assert.Null(placement.OutOfUseFrom);
            }
        }

        Assert.Equal(told.Length, plan.Placements.Count(p => p.OutOfUseFrom is not null));
        Assert.Equal(told.Length, plan.Remarks.Count(r => r.Kind == PlanRemarkKind.OutOfUse));
    }
}
