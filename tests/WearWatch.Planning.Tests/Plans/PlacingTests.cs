using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

public sealed class PlacingTests
{
    // Oracle: the plain count of the whole placing, done anew after every move.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_cost_kept_up_to_date_is_the_cost_counted_anew(int seed)
    {
        var plan = new PlanCase(A.SmallPlant(seed, chains: 15, lines: 3, windows: 5));
        var placing = new Placing(plan, EarliestDueDate.Place(plan));
        var dice = new Random(seed);
        for (var i = 0; i < 2000; i++)
        {
            var u = dice.Next(plan.Units.Length);
            placing.Move(u, dice.Next(5) == 0 ? PlanCase.Later : plan.WindowsOf[u][dice.Next(plan.WindowsOf[u].Length)]);
            Assert.Equal(PlanCosting.Of(plan, placing.ToArray()).Total, placing.Total, 1e-6);
        }
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void So_is_it_where_some_parts_cannot_come_in_time(int seed)
    {
        var small = A.SmallPlant(seed, chains: 15, lines: 3, windows: 5);
        var plan = new PlanCase(small with
        {
            Spares = [.. small.Spares.Select(s => s with { ExpressLeadTime = TimeSpan.FromDays(18) })],
        });
        var placing = new Placing(plan, EarliestDueDate.Place(plan));
        var (dice, missing) = (new Random(seed), 0);
        for (var i = 0; i < 2000; i++)
        {
            var u = dice.Next(plan.Units.Length);
            placing.Move(u, dice.Next(5) == 0 ? PlanCase.Later : plan.WindowsOf[u][dice.Next(plan.WindowsOf[u].Length)]);
            Assert.Equal(PlanCosting.Of(plan, placing.ToArray()).Total, placing.Cost, 1e-4);
            Assert.Equal(PlanCosting.Weighed(plan, placing.ToArray()), placing.Total, 1e-4);
            if (placing.Total > placing.Cost + 1) missing++;
        }

        Assert.InRange(missing, 100, 1999);
    }

    [Fact]
    public void Annealing_ends_no_dearer_than_it_started_and_leaves_what_is_kept()
    {
        var input = A.SmallPlant(
            6, chains: 15, lines: 3, windows: 5) with
        { Kept = new Dictionary<string, string?> { ["C5"] = "L3/28" } };
        var plan = new PlanCase(input);
        var start = EarliestDueDate.Place(plan);
        var end = Annealing.From(plan, start, TestContext.Current.CancellationToken);
        Assert.True(PlanCosting.Of(plan, end).Total <= PlanCosting.Of(plan, start).Total);
        Assert.Equal("L3/28", plan.Windows[end[Array.FindIndex(plan.Units, u => u.Name == "C5")]].Id);
    }
}
