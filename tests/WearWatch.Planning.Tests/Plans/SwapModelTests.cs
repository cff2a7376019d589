using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Tests.Plans;

public sealed class SwapModelTests
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    [Fact]
    public void The_search_for_the_best_plan_and_annealing_meet_on_a_small_plant()
    {
        var plan = new PlanCase(A.SmallPlant(7));
        using var model = new SwapModel(plan, EarliestDueDate.Place(plan));
        var best = model.Solve(0, Minute);
        var annealed = Annealing.From(plan, EarliestDueDate.Place(plan), TestContext.Current.CancellationToken);
        Assert.Equal(PlanCosting.Of(plan, best!).Total, PlanCosting.Of(plan, annealed).Total, 0.005);
    }

    // Oracle: the cheapest of all placings, counted one by one. A solve that may end far from it must still tell a bound below
    // it.
    [Theory]
    [InlineData(31, 0.05)]
    [InlineData(32, 0.05)]
    [InlineData(33, 0.3)]
    [InlineData(34, 0.3)]
    [InlineData(35, 1)]
    [InlineData(36, 1)]
    public void A_solve_that_ends_early_gives_a_bound_below_the_cheapest_plan_and_a_plan_within_its_gap(int seed, double gap)
    {
        var input = A.SmallPlant(seed);
        var plan = new PlanCase(input);
        using var model = new SwapModel(plan, EarliestDueDate.Place(plan));
        var found = PlanCosting.Of(plan, model.Solve(gap, Minute)!).Total;
        var (cheapest, _) = EveryPlan.CheapestOf(input);
        Assert.True(model.HasEnded);
        Assert.InRange(model.Bound, 0, cheapest + 0.005);
        Assert.InRange(found, cheapest - 0.005, (1 + gap) * model.Bound + 0.005);
    }

    // Oracle: the plain count. The solver would refuse a start that its own rows do not admit, or price it otherwise.
    [Theory]
    [InlineData(41)]
    [InlineData(42)]
    [InlineData(43)]
    public void The_solver_takes_the_plan_that_it_is_given_and_gives_none_dearer(int seed)
    {
        var plan = new PlanCase(A.SmallPlant(seed, chains: 15, lines: 3, windows: 5));
        var start = Annealing.From(plan, EarliestDueDate.Place(plan), TestContext.Current.CancellationToken);
        using var model = new SwapModel(plan, start);
        var found = model.Solve(gap: 10, Minute);
        Assert.True(PlanCosting.Of(plan, found!).Total <= PlanCosting.Of(plan, start).Total + 0.005);
    }

    [Fact]
    public void Supply_is_watched_on_the_last_date_before_each_delivery_and_before_orders_arrive()
    {
        var supply = new PartSupply(
            new Spare
            {
                Part = A.Chain16B,
                InStock = 5,
                OnOrder = [new Delivery(A.Monday.AddDays(20), 10)],
                LeadTime = TimeSpan.FromDays(40),
            }, A.Monday);
        int[] days = [28, 7, 14, 21, 35, 14, 42];
        Assert.Equal([(14, 5), (35, 15)], supply.LastDatesBeforeMore(days.Select(d => A.Monday.AddDays(d)))
            .Select(x => ((int)(x.Date - A.Monday).TotalDays, x.Available)).Order());
    }
}
