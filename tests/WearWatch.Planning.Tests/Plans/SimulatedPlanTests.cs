using MathNet.Numerics.Statistics;
using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Plans;

public sealed class SimulatedPlanTests
{
    // Oracle: 10,000 lives drawn for each chain (inverse transform, seed fixed), each played through to its swap. A plan's cost
    // is to agree within 2 %. The part that chance decides must agree within 4 standard errors of the simulation, which is the
    // stricter test.
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(9)]
    public async Task Ten_thousand_simulated_lives_cost_what_the_plan_says(int seed)
    {
        var input = A.SmallPlant(seed, chains: 12);
        Agree(input, await SwapPlanner.ProposeAsync(input, PlannerEffort.Usual, null, TestContext.Current.CancellationToken),
            seed);
        Agree(input, new SwapCosting(input).Count(new Dictionary<string, string?>()), seed);
    }

    private static void Agree(PlanInput input, SwapPlan plan, int seed)
    {
        var (simulated, standardError) = Simulated(input, plan, seed);
        var byChance = plan.Cost.UnusedLife + plan.Cost.PastLimit + plan.Cost.Breakdowns;
        Assert.InRange(simulated, byChance - 4 * standardError, byChance + 4 * standardError);
        Assert.InRange(simulated - byChance, -0.02 * plan.Cost.Total, 0.02 * plan.Cost.Total);
    }

    private static (double Mean, double StandardError) Simulated(PlanInput input, SwapPlan plan, int seed)
    {
        var dice = new Random(seed);
        var horizon = (input.HorizonEnd + input.Costs.NextChance - input.Now).TotalHours;
        var lives = plan.Placements.Select(p => Enumerable.Range(0, 10_000).Select(_ => OneLife(
            input.Tasks.Single(t => t.Chain == p.Chain), p.Window is { } w ? (w.Start - input.Now).TotalHours : horizon,
            p.Window is not null, input.Costs, dice)).ToArray()).ToArray();
        return (lives.Sum(l => l.Average()), Math.Sqrt(lives.Sum(l => l.Variance() / l.Length)));
    }

    private static double OneLife(SwapTask task, double swapAt, bool planned, PlanningCosts costs, Random dice)
    {
        var limitAt = task.Left.At(dice.NextDouble());
        var failsAt = limitAt - costs.MeanHoursToFailurePastLimit * Math.Log(1 - dice.NextDouble());
        var unused = planned && swapAt < limitAt ? (limitAt - swapAt) / (task.HoursRun + limitAt) : 0;
        return task.ChainPrice * unused
            + (limitAt <= swapAt ? task.SprocketPrice : 0)
            + (failsAt <= swapAt ? costs.BreakdownHours * costs.StoppedLinePerHour + costs.BreakdownExtra : 0);
    }
}
