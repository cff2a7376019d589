using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class HindsightTests
{
    private static readonly double[] Counters = [300, 800, 1300, 1800, 2300, 2800, 3300];

    [Fact]
    public void A_jump_that_the_next_readings_take_back_was_a_misreading()
    {
        // 0.3 % too much at the fifth: by itself it may be a rate that rose; the two after it say that it was not.
        var readings = A.Readings(0.2, Counters);
        readings[4] = A.Reading(Counters[4], 0.2 + 0.2 * 2.3 + 0.3);

        var (before, after) = (Assess(readings[..5]), Assess(readings));

        Assert.True(after.Observations[4].ProbabilityMisreadNow > 0.9, $"{after.Observations[4].ProbabilityMisreadNow}");
        Assert.True(after.Observations[4].ProbabilityMisreadNow > before.Observations[4].ProbabilityMisreadNow);
        Assert.Equal(before.Observations[4].ProbabilityMisread, after.Observations[4].ProbabilityMisread);
    }

    [Fact]
    public void A_jump_that_the_next_readings_bear_out_is_believed_in_the_end()
    {
        // The rate rises threefold after the fourth reading.
        var readings = A.Readings(0.2, Counters);
        for (var i = 4; i < readings.Length; i++)
            readings[i] = A.Reading(Counters[i], 0.2 + 0.2 * 1.8 + 0.6 * (Counters[i] - 1800) / 1000);

        var (before, after) = (Assess(readings[..5]).Observations[4], Assess(readings).Observations[4]);

        Assert.True(after.ProbabilityMisreadNow < before.ProbabilityMisread,
            $"{before.ProbabilityMisread} {after.ProbabilityMisreadNow}");
        Assert.True(after.ProbabilityMisreadNow < 0.05, $"{after.ProbabilityMisreadNow}");
    }

    [Fact]
    public void What_was_believed_and_is_doubted_since_asks_a_person()
    {
        var doubted = new JudgedObservation(new Observation(1000, 0.9, 0.02, 0), 0.3, 0) { ProbabilityMisreadNow = 0.8 };
        Assert.True(doubted.IsDoubtedInHindsight);
        Assert.False((doubted with { ProbabilityMisread = 0.6 }).IsDoubtedInHindsight); // it was asked about when it came
        Assert.False(new JudgedObservation(doubted.Observation, 0.3, 0).IsDoubtedInHindsight); // nothing has come after it
    }

    [Theory]
    [InlineData(0x00FFul, 0xFF00ul, 0.25, 0x40BFul)] // 255 to 0 by a quarter: 191; 0 to 255: 64
    [InlineData(0xFFFFul, 0xFFFFul, 0.5, 0xFFFFul)]
    [InlineData(0x0000ul, 0x00FFul, 0.0, 0x0000ul)]
    public void Merged_accounts_blend_their_odds_by_weight(ulong one, ulong other, double share, ulong blended) =>
        Assert.Equal(blended, Hindsight.Blend(one, other, share));

    [Fact]
    public void Only_the_newest_eight_are_kept()
    {
        var doubts = Enumerable.Range(0, 9).Aggregate(0ul, (d, i) => Hindsight.After(d, misread: i == 0));
        Assert.Equal(0ul, doubts);
    }

    private static Assessment Assess(IReadOnlyList<Reading> readings) =>
        Assessment.Of(A.Card(), readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, A.Monday);
}
