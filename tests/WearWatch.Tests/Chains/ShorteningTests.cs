using CsCheck;
using WearWatch.Chains;
using WearWatch.Chains.Families;

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
        Assert.Contains(
            "Take out 2 pitches", shortening.AdviceFor(ChainFamily.Usual, lifts: false, 4).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_chain_has_nothing_to_take_out_and_is_told_when()
    {
        var shortening = Shortening.Of(60, 25.4, 1);

        Assert.Equal(0, shortening.RemovablePitches);
        Assert.Contains(
            "two pitches can go at 3.3 %", shortening.AdviceFor(ChainFamily.Usual, lifts: false, 5).ToString(),
            StringComparison.Ordinal);
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
            var @case = new LimitCase
            {
                ChainPitches = pitches,
                PitchMm = 25.4,
                TakeUpTravelMm = travelMm,
                PitchesOut = 2 * pairs,
            };
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

    // Sources: docs/references.md [22], [30]: a worn lifting chain is never spliced or repaired in part.
    [Theory]
    [InlineData("roller", false, true)]
    [InlineData("conveyor", false, true)]
    [InlineData("roller", true, false)]
    [InlineData("leaf", false, false)]
    [InlineData("round_link", false, false)]
    public void Nobody_is_told_to_shorten_a_chain_that_lifts(string family, bool lifts, bool shortens)
    {
        var kind = ChainFamily.Named(family);
        var advice = Shortening.Of(120, 25.4, 2).AdviceFor(kind, lifts, 3).ToString();
        Assert.Equal(shortens, advice.Contains("Take out 2 pitches", StringComparison.Ordinal));
        Assert.Equal(!shortens, advice.Contains("Never shorten", StringComparison.Ordinal));
        Assert.Equal(shortens, new ChainCard { Name = "K1", PitchMm = 25.4, Family = kind, Lifts = lifts }.MayBeShortened);
    }

    // Common practice: what is nearly worn out is not shortened again; the review met 2.74 % of 3 %.
    [Theory]
    [InlineData(2.74, "Do not shorten it any more")]
    [InlineData(1.7, "Take out 2 pitches")]
    [InlineData(1.2, "two pitches can go at 1.7 %")]
    public void What_is_nearly_worn_out_is_not_shortened(double percent, string says) => Assert.Contains(
        says, Shortening.Of(120, 25.4, percent).AdviceFor(ChainFamily.Usual, false, 3).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("roller", 2.5, null, "Above 2 %")]
    [InlineData("roller", 1.0, 3, "third chain")]
    [InlineData("conveyor", null, null, "Look at the teeth")]
    [InlineData("leaf", 3.0, null, "never splice")]
    public void Advice_on_sprockets_comes_with_every_swap(string family, double? percent, int? chains, string says) =>
        Assert.Contains(says, ChainFamily.Named(family).SprocketAdvice(percent, chains).ToString(), StringComparison.Ordinal);
}
