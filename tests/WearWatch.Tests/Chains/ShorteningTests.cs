using CsCheck;
using WearWatch.Chains;

namespace WearWatch.Tests.Chains;

public sealed class ShorteningTests
{
    // Geometry, from the rule that a take-up allows the removal of two pitches: docs/references.md [38].
    [Fact]
    public void A_loop_of_120_pitches_at_three_percent_grows_by_3_6_pitches()
    {
        var shortening = Shortening.Of(120, 25.4, 3);

        Assert.Equal(3.6 * 25.4, shortening.ExtraLengthMm, 1e-9);
        Assert.Equal(1.8 * 25.4, shortening.TakeUpUsedMm, 1e-9);
        Assert.Equal(2, shortening.RemovablePitches);
        Assert.Equal(100.0 * 4 / 120, shortening.NextRemovalPercent, 1e-12);
        Assert.Contains("Take out 2 pitches", shortening.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_chain_has_nothing_to_take_out_and_is_told_when()
    {
        var shortening = Shortening.Of(60, 25.4, 1);

        Assert.Equal(0, shortening.RemovablePitches);
        Assert.Contains("two pitches can go at 3.3 %", shortening.Advice, StringComparison.Ordinal);
    }

    // Geometry: 118 pitches at 3 % are 121.54 pitches long, 1.54 more than the 120 of the new chain.
    [Fact]
    public void What_was_taken_out_has_used_up_its_part_of_the_slack()
    {
        var shortening = Shortening.Of(120, 25.4, 3, pitchesOut: 2);

        Assert.Equal(1.54 * 25.4, shortening.ExtraLengthMm, 1e-9);
        Assert.Equal(0, shortening.RemovablePitches);
        Assert.Equal(100.0 * 4 / 118, shortening.NextRemovalPercent, 1e-12);
    }

    [Fact]
    public void At_the_take_up_limit_the_take_up_is_just_at_its_end_however_many_pitches_are_out() =>
        Gen.Select(Gen.Int[20, 4000], Gen.Double[1, 400], Gen.Int[0, 8]).Sample((pitches, travelMm, pairs) =>
        {
            var @case = new LimitCase { ChainPitches = pitches, PitchMm = 25.4, TakeUpTravelMm = travelMm, PitchesOut = 2 * pairs };
            var limit = Shortening.TakeUpLimitPercent(@case)!.Value;
            return Math.Abs(Shortening.Of(pitches, 25.4, limit, 2 * pairs).TakeUpUsedMm - travelMm) < 1e-6;
        });

    [Fact]
    public void Pitches_come_out_in_pairs_and_never_more_than_the_chain_has_grown() =>
        Gen.Select(Gen.Int[10, 4000], Gen.Double[-0.2, 9]).Sample((pitches, percent) =>
        {
            var shortening = Shortening.Of(pitches, 25.4, percent);
            return int.IsEvenInteger(shortening.RemovablePitches)
                && shortening.RemovablePitches * 25.4 <= shortening.ExtraLengthMm + 1e-6
                && shortening.NextRemovalPercent > percent - 1e-6;
        });

    [Theory]
    [InlineData(ChainFamily.Roller, 2.5, null, "Above 2 %")]
    [InlineData(ChainFamily.Roller, 1.0, 3, "third chain")]
    [InlineData(ChainFamily.Conveyor, null, null, "Look at the teeth")]
    [InlineData(ChainFamily.Leaf, 3.0, null, "never splice")]
    public void Advice_on_sprockets_comes_with_every_swap(ChainFamily family, double? percent, int? chains, string says) =>
        Assert.Contains(says, SprocketAdvice.For(family, percent, chains), StringComparison.Ordinal);
}
