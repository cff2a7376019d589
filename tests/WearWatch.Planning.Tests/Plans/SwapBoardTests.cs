using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

public sealed class SwapCostingTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    public void The_change_shown_for_a_move_is_the_difference_of_two_counts(int seed)
    {
        var board = new SwapCosting(A.SmallPlant(seed));
        var placements = new Dictionary<string, string?> { ["C1"] = "L2/14", ["C2"] = "L1/28", ["C4"] = "L1/14" };
        var before = board.Count(placements).Cost.Total;
        foreach (var move in board.MovesOf("C1", placements))
        {
            var moved = new Dictionary<string, string?>(placements) { ["C1"] = move.Window?.Id };
            Assert.Equal(board.Count(moved).Cost.Total - before, move.Change, 6);
        }

        Assert.Equal(4, board.MovesOf("C1", placements).Count);
        Assert.Contains(board.MovesOf("C1", placements), m => Math.Abs(m.Change) < 1e-9 && m.Window?.Id == "L2/14");
    }

    [Fact]
    public void What_waiting_costs_is_the_move_to_the_next_shutdown()
    {
        var board = new SwapCosting(A.SmallPlant(3));
        var placements = new Dictionary<string, string?> { ["C1"] = "L2/14", ["C2"] = "L1/42" };
        var waiting = board.CostsOfWaiting(placements);
        Assert.Equal(["C1"], waiting.Keys);
        Assert.Equal(board.MovesOf("C1", placements).Single(m => m.Window?.Id == "L2/28").Change, waiting["C1"], 6);
    }

    [Fact]
    public void Parallel_strands_move_together() => Assert.Equal(["C3", "C5"], new SwapCosting(A.SmallPlant(3)).Together("C3"));

    [Fact]
    public void A_window_that_is_gone_means_not_in_the_horizon() =>
        Assert.All(new SwapCosting(A.SmallPlant(3)).Count(new Dictionary<string, string?> { ["C1"] = "L2/99" }).Placements,
            p => Assert.Null(p.Window));
}
