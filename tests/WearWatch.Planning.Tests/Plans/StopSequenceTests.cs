using WearWatch.Planning.Plans;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>The course of a stop by its fitters.</summary>
public sealed class StopSequenceTests
{
    // R. L. Graham, SIAM J. Appl. Math. 17 (1969) 416 (from memory): two machines, jobs of 3, 3, 2, 2, 2. The longest first
    // ends after 7, which is 4/3 - 1/6 times the shortest course of 6.
    [Fact]
    public void Two_fitters_with_swaps_of_3_3_2_2_2_hours_end_after_7()
    {
        var turns = StopSequence.Of([.. new[] { 2.0, 3, 2, 3, 2 }.Select((h, i) => Task($"C{i}", h))], 2);
        Assert.Equal(7, turns.Max(t => t.EndH));
        Assert.Equal([0.0, 0.0, 3.0, 3.0, 5.0], turns.Select(t => t.StartH));
    }

    [Fact]
    public void A_swap_waits_until_all_its_people_are_free_and_nobody_does_two_at_once()
    {
        var turns = StopSequence.Of([Task("A", 4), Task("B", 3, people: 2), Task("C", 1)], 2);
        var both = turns.Single(t => t.Chain == "B");
        Assert.Equal((4.0, 7.0), (both.StartH, both.EndH));
        Assert.Equal([1, 2], both.Fitters);
        foreach (var fitter in new[] { 1, 2 })
        {
            var his = turns.Where(t => t.Fitters.Contains(fitter)).ToArray();
            Assert.All(his.Zip(his.Skip(1)), pair => Assert.True(pair.First.EndH <= pair.Second.StartH));
        }
    }

    [Fact]
    public void A_chain_that_has_a_hard_date_comes_first_and_strands_stay_together()
    {
        var turns = StopSequence.Of(
        [
            Task("LONG", 6), Task("S-1", 2) with { ParallelGroup = "drive" }, Task("S-2", 1) with { ParallelGroup = "drive" },
            Task("HOIST", 1) with { OutOfUseBy = new DateTimeOffset(2026, 12, 1, 0, 0, 0, TimeSpan.Zero) },
        ], 1);
        Assert.Equal(["HOIST", "LONG", "S-1", "S-2"], turns.Select(t => t.Chain));
    }

    [Theory]
    [InlineData(16, 8, 1, 2)]
    [InlineData(16, 8, 3, 3)]
    [InlineData(0, 8, 1, 1)]
    public void Fitters_follow_from_the_crew_hours_and_from_what_a_swap_needs(
        double crew, double length, int people, int fitters) =>
        Assert.Equal(fitters, StopSequence.FittersOf(crew, length, [Task("A", 1, people)]));

    private static SwapTask Task(string chain, double hours, int people = 1) => A.Swap(chain, hours: hours, people: people);
}
