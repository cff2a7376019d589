using CsCheck;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Tests.Entries;

public sealed class EntryDoubtTests
{
    private static readonly ChainCard Card = new() { Name = "K1", ChainType = "16B-1", PitchMm = 25.4, Pitches = 120 };
    private static readonly Expectation Expected = new(1.2, 0.06);

    [Fact]
    public void A_reading_that_fits_is_not_doubted_and_asks_nothing()
    {
        var doubt = EntryDoubt.Of(Card, Entry(24, 1.3), Expected);

        Assert.False(doubt.IsDoubted);
        Assert.True(doubt.ProbabilityHonest > 0.9);
        Assert.Equal("", doubt.Question.ToString());
    }

    // The true elongation is 1.25 %; each row is what somebody would enter after one slip.
    [Theory]
    [InlineData(23, 24 * 25.4, SlipKind.PitchesMiscounted, "over 24 pitches instead of 23")]
    [InlineData(25, 24 * 25.4, SlipKind.PitchesMiscounted, "over 24 pitches instead of 25")]
    [InlineData(26, 24 * 25.4, SlipKind.PitchesMiscounted, "over 24 pitches instead of 26")]
    [InlineData(24, 24, SlipKind.WrongUnit, "in inches")]
    [InlineData(24, 24 * 25.4 * 25.4, SlipKind.WrongUnit, "in millimetres")]
    [InlineData(24, 24 * 2.54, SlipKind.DecimalPoint, "ten times as much")]
    [InlineData(24, 24 * 254, SlipKind.DecimalPoint, "a tenth of it")]
    [InlineData(24, 24 * 25.4 + 15.88 / 1.0125, SlipKind.OutsideOfRollers, "over the outside of the rollers")]
    [InlineData(24, 24 * 25.4 - 15.88 / 1.0125, SlipKind.InsideOfRollers, "between the inside of the rollers")]
    [InlineData(24, 24 * 0.0254, SlipKind.WrongUnit, "in metres")]
    [InlineData(24, 24 * 25.4 + 10 / 1.0125, SlipKind.TapeNotAtZero, "measured from the 10 mm mark of the tape")]
    [InlineData(24, 24 * 25.4 + 100 / 1.0125, SlipKind.TapeNotAtZero, "measured from the 100 mm mark of the tape")]
    [InlineData(12, 24 * 25.4, SlipKind.PitchesMiscounted, "over 24 pitches, every second one counted")]
    public void A_slip_is_recognised(int pitches, double newLengthMm, SlipKind kind, string words)
    {
        var doubt = EntryDoubt.Of(Card, Entry(pitches, newLengthMm * 1.0125, Tool.Tape), Expected);
        var first = doubt.Slips[0];

        Assert.True(doubt.IsDoubted);
        Assert.Equal((kind, words), (first.Kind, first.Words.ToString()));
        Assert.True(first.Probability > 0.5);
        Assert.Contains(words, doubt.Question.ToString(), StringComparison.Ordinal);
        Assert.InRange(first.ElongationPercent, 1.0, 1.5);
    }

    // 617.22 mm is 1.25 % over 24 pitches.
    [Theory]
    [InlineData(671.22, SlipKind.DigitsSwapped, 617.22)]
    [InlineData(61.22, SlipKind.DigitMissing, 617.22)]
    public void A_slip_of_the_lengths_digits_is_recognised(double lengthMm, SlipKind kind, double meantMm)
    {
        var doubt = EntryDoubt.Of(Card, Entry(24, lengthMm, Tool.Tape), Expected);

        Assert.True(doubt.IsDoubted);
        Assert.Equal((kind, "length"), (doubt.Slips[0].Kind, doubt.Column));
        Assert.Equal(meantMm, doubt.Slips[0].LengthMm, 0.005);
    }

    [Fact]
    public void The_count_over_which_a_chain_is_usually_measured_is_named()
    {
        var doubt = EntryDoubt.Of(
            Card, Entry(40, 48 * 25.4 * 1.0125, Tool.Tape), Expected, new Alternatives { UsualPitches = 48 });

        Assert.Equal((SlipKind.PitchesMiscounted, 48), (doubt.Slips[0].Kind, doubt.Slips[0].Pitches));
    }

    [Fact]
    public void Of_two_explanations_that_are_near_both_are_offered_and_none_is_chosen()
    {
        var near = EntryDoubt.Of(Card, Entry(24, 24 * 19.05 * 1.0083, Tool.Tape), Expected, new Alternatives
        {
            OtherChains = [OnPitchOf19("K2"), OnPitchOf19("K3")],
        });
        var clear = EntryDoubt.Of(Card, Entry(24, 671.22, Tool.Tape), Expected);

        Assert.Equal((2, null), (near.Offered.Count, near.Chosen));
        Assert.All(near.Offered, slip => Assert.Contains($"{slip.Words}", $"{near.Question}", StringComparison.Ordinal));
        Assert.Equal(SlipKind.DigitsSwapped, clear.Chosen?.Kind);
    }

    [Fact]
    public void Inches_with_their_digits_swapped_are_recognised()
    {
        var doubt = EntryDoubt.Of(
            Card, Entry(24, 42.3125 * 25.4, Tool.Tape) with { Written = "42 5/16", Unit = LengthUnit.Inch }, Expected);

        Assert.Equal(SlipKind.DigitsSwapped, doubt.Slips[0].Kind);
        Assert.Equal(24.3125 * 25.4, doubt.Slips[0].LengthMm, 0.01);
    }

    // Place B wears three quarters of place A.
    [Fact]
    public void Another_place_of_the_chain_is_named()
    {
        var doubt = EntryDoubt.Of(Card, Entry(24, 1.5), new Expectation(2, 0.02), new Alternatives
        {
            OtherStrands = [($"place B instead of the one entered", new Expectation(1.5, 0.03))],
        });

        Assert.Equal("OtherStrand: place B instead of the one entered", $"{doubt.Slips[0].Kind}: {doubt.Slips[0].Words}");
        Assert.Empty(doubt.Offered);
    }

    [Fact]
    public void A_neighbour_of_the_same_pitch_is_named_by_its_usual_count()
    {
        var neighbour = Card with { Name = "K2" };
        var doubt = EntryDoubt.Of(Card, Entry(30, 30 * 25.4 * 1.008, Tool.Tape), Expected, new Alternatives
        {
            UsualPitches = 24,
            OtherChains = [NeighbourReading.Of(neighbour, new Expectation(0.8, 0.05), Card, isItsCount: true, isOwnCount: false)],
        });

        Assert.Equal((SlipKind.OtherChain, "K2"), (doubt.Slips[0].Kind, doubt.Slips[0].Chain));
    }

    [Fact]
    public void Another_chains_reading_is_recognised_by_its_pitch()
    {
        var neighbour = new ChainCard { Name = "K2", PitchMm = 19.05 };
        var alternatives = new Alternatives { OtherChains = [new(neighbour, new Expectation(0.8, 0.05), 1)] };
        var doubt = EntryDoubt.Of(Card, Entry(24, 24 * 19.05 * 1.0083, Tool.Tape), Expected, alternatives);

        Assert.Equal((SlipKind.OtherChain, "K2"), (doubt.Slips[0].Kind, doubt.Slips[0].Chain));
    }

    [Fact]
    public void A_chain_that_is_suddenly_new_was_replaced()
    {
        var doubt = EntryDoubt.Of(Card, Entry(48, 0.15), new Expectation(2.4, 0.06));

        Assert.True(doubt.IsDoubted);
        Assert.Equal(SlipKind.ReplacedWithoutRecord, doubt.Slips[0].Kind);
    }

    [Fact]
    public void A_whole_loop_that_lost_two_pitches_was_shortened()
    {
        var doubt = EntryDoubt.Of(Card, Entry(120, 118 * 25.4 * 1.0121, Tool.Tape), Expected);

        Assert.Equal((SlipKind.ShortenedWithoutRecord, 118), (doubt.Slips[0].Kind, doubt.Slips[0].Pitches));
    }

    [Fact]
    public void A_counter_that_was_set_back_explains_a_chain_that_is_more_worn_than_its_hours()
    {
        var alternatives = new Alternatives { IfCounterWasReset = new Expectation(2.1, 0.06) };
        var doubt = EntryDoubt.Of(Card, Entry(24, 2.08), Expected, alternatives);

        Assert.Equal(SlipKind.CounterReset, doubt.Slips[0].Kind);
    }

    [Fact]
    public void A_chain_that_began_to_wear_faster_is_bad_news_and_no_slip()
    {
        var slow = EntryDoubt.Of(Card, Entry(24, 1.75), new Expectation(1.2, 0.06, GrowthPercent: 0));
        var faster = EntryDoubt.Of(Card, Entry(24, 1.75), new Expectation(1.2, 0.06, GrowthPercent: 0.35));

        Assert.True(slow.IsDoubted);
        Assert.False(faster.IsDoubted);
    }

    [Fact]
    public void What_fits_nothing_is_to_be_measured_again()
    {
        var doubt = EntryDoubt.Of(Card, Entry(24, 1.9), Expected);

        Assert.Equal(SlipKind.Misread, doubt.Slips[0].Kind);
        Assert.Contains("measure again", doubt.Question.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Odds_add_up_to_one() =>
        Gen.Select(Gen.Double[200, 2000], Gen.Double[0, 3], Gen.Double[0.02, 0.5]).Sample((lengthMm, mean, deviation) =>
    {
        var doubt = EntryDoubt.Of(Card, Entry(24, lengthMm, Tool.Tape), new Expectation(mean, deviation));
        var told = doubt.ProbabilityHonest + doubt.Slips.Sum(s => s.Probability);
        // Slips below one percent each, of which there are at most fourteen, are not told.
        return told is > 0.86 and < 1 + 1e-9
            && doubt.Slips.Zip(doubt.Slips.Skip(1)).All(p => p.First.Probability >= p.Second.Probability);
    });

    [Fact]
    public void An_entry_that_the_gauge_refuses_is_a_callers_mistake() =>
        Assert.Throws<ArgumentException>(() => EntryDoubt.Of(Card, Entry(24, -1, Tool.Tape), Expected));

    private static Reading Entry(int pitches, double percent) => Entry(pitches, pitches * 25.4 * (1 + percent / 100), Tool.Tape);

    private static Reading Entry(int pitches, double lengthMm, Tool tool) =>
        new() { Chain = "K1", Tool = tool, Pitches = pitches, LengthMm = lengthMm };

    private static NeighbourReading OnPitchOf19(string name) =>
        new(new ChainCard { Name = name, PitchMm = 19.05 }, new Expectation(0.8, 0.05));
}
