using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

public sealed class BruteForceTests
{
    // Oracle: all 4,096 (or fewer, with parallel strands) placings of a small plant, counted one by one. The solver states crews,
    // stops and parts in its own way (as rows of a linear program), so agreement to a cent is more than its own arithmetic
    // repeated.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public async Task The_planner_finds_the_cheapest_of_all_plans_of_a_small_plant(int seed)
    {
        var input = A.SmallPlant(seed);
        var plan = await SwapPlanner.ProposeAsync(input, A.ToTheEnd, null, TestContext.Current.CancellationToken);
        var (cheapest, _) = EveryPlan.CheapestOf(input);
        Assert.Equal(cheapest, plan.Cost.Total, 0.005);
        Assert.InRange(plan.Bound, 0, cheapest + 0.005);
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public async Task It_finds_the_cheapest_when_some_swaps_are_kept_where_they_are(int seed)
    {
        var input = A.SmallPlant(seed) with { Kept = new Dictionary<string, string?> { ["C1"] = "L2/14", ["C4"] = null } };
        var plan = await SwapPlanner.ProposeAsync(input, A.ToTheEnd, null, TestContext.Current.CancellationToken);
        var (cheapest, _) = EveryPlan.CheapestOf(input);
        Assert.Equal("L2/14", plan.Placements.Single(p => p.Chain == "C1").Window?.Id);
        Assert.Null(plan.Placements.Single(p => p.Chain == "C4").Window);
        Assert.Equal(cheapest, plan.Cost.Total, 0.005);
        Assert.InRange(plan.Bound, 0, cheapest + 0.005);
    }
}
