using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>Why a swap stands where it does agrees with what the whole plan costs, counted anew.</summary>
public sealed class SwapReasonTests
{
    [Fact]
    public void The_differences_by_cause_add_up_to_what_the_move_changes()
    {
        for (var seed = 1; seed <= 5; seed++)
        {
            var input = A.SmallPlant(seed);
            var board = new SwapCosting(input);
            var placements = SwapPlanner.ByEarliestDueDate(input).Placements.ToDictionary(p => p.Chain, p => p.Window?.Id);
            foreach (var chain in placements.Keys)
            {
                var reason = board.WhyHere(chain, placements);
                Assert.Equal(placements[chain], reason.Here.Window?.Id);
                Assert.Equal(0, reason.Here.Change, 6);
                foreach (var beside in new[] { reason.Earlier, reason.Later }.OfType<SwapNeighbour>())
                {
                    var moved = new Dictionary<string, string?>(placements);
                    foreach (var other in board.Together(chain)) moved[other] = beside.Move.Window?.Id;
                    var change = board.Count(moved).Cost.Total - board.Count(placements).Cost.Total;
                    Assert.Equal(change, beside.Move.Change, 6);
                    // Differences below half a unit of money are not told one by one; there are eight causes.
                    Assert.Equal(change, beside.Differences.Sum(d => d.More), 4.0);
                }
            }
        }
    }

    [Fact]
    public void Waiting_past_the_limit_is_held_back_by_the_breakdown_and_hurry_by_the_unused_life()
    {
        var input = A.Input(
            [A.Swap(forecast: A.Certain(24 * 30), price: 3000)], [A.Window(5), A.Window(25), A.Window(60)]);
        var reason = new SwapCosting(input).WhyHere("C1", new Dictionary<string, string?> { ["C1"] = "L1/25" });
        Assert.Equal((CostCause.UnusedLife, true), (reason.Earlier!.Main!.Value, reason.Earlier.Move.Change > 0));
        Assert.Equal((CostCause.Breakdowns, true), (reason.Later!.Main!.Value, reason.Later.Move.Change > 0));
        Assert.Null(reason.NotAfter);
    }

    [Fact]
    public void The_last_shutdown_before_a_hard_date_says_so()
    {
        var input = A.Input([A.Swap(outOfUseByDay: 30)], [A.Window(5), A.Window(25), A.Window(60)]);
        var board = new SwapCosting(input);
        Assert.Equal(A.Monday.AddDays(30), board.WhyHere("C1", new Dictionary<string, string?> { ["C1"] = "L1/25" }).NotAfter);
        Assert.Null(board.WhyHere("C1", new Dictionary<string, string?> { ["C1"] = "L1/05" }).NotAfter);
    }
}
