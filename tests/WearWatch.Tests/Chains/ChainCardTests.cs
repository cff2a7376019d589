using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Tests.Chains;

public sealed class ChainCardTests
{
    [Fact]
    public void A_card_refuses_what_no_chain_can_have()
    {
        Refuses(() => Card() with { PitchMm = 0 });
        Refuses(() => Card() with { PitchMm = 2001 });
        Refuses(() => Card() with { LimitPercent = 0 });
        Refuses(() => Card() with { LimitPercent = 10 });
        Refuses(() => Card() with { Strands = 0 });
        Refuses(() => Card() with { Strands = 25 });
        Refuses(() => Card() with { CentreDistanceMm = 0 });
        Refuses(() => Card() with { TakeUpTravelMm = -1 });
        Refuses(() => Card() with { OilingIntervalHours = 0 });
        Refuses(() => Card() with { OilingIntervalHours = 100_001 });
        Refuses(() => Card() with { OilingSurroundingsFactor = 0 });
        Refuses(() => Card() with { OilingSurroundingsFactor = 21 });
    }

    [Fact]
    public void A_card_asks_for_a_name_and_a_pitch_only()
    {
        var card = Card();

        Assert.Equal((ChainFamily.Usual, 1, 1.0), (card.Family, card.Strands, card.OilingSurroundingsFactor));
        Assert.Equal((3.0, LimitReason.General), (ReplacementLimit.For(card).Percent, ReplacementLimit.For(card).Reason));
    }

    [Fact]
    public void A_leaf_chain_lifts_whether_the_card_says_so_or_not() =>
        Assert.True(LimitCase.Of(Card() with { Family = ChainFamily.Named("leaf") }).Lifts);

    [Fact]
    public void What_is_computed_from_sourced_numbers_is_as_sure_as_the_less_sure()
    {
        var read = new Sourced(4, "docs/references.md [26]", IsVerified: true);
        var recalled = Sourced.FromMemory(5);

        Assert.Equal(new Sourced(8, "docs/references.md [26]", IsVerified: true), read.Times(2));
        Assert.Equal(Sourced.FromMemory(20), read.Times(recalled));
        Assert.Equal(Sourced.FromMemory(20), recalled.Times(read));
    }

    private static ChainCard Card() => new() { Name = "K1", PitchMm = 25.4 };

    private static void Refuses(Func<ChainCard> make) => Assert.Throws<ArgumentOutOfRangeException>(make);
}
