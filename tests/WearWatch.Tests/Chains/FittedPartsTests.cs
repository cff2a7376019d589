using WearWatch.Chains;

namespace WearWatch.Tests.Chains;

/// <summary>What was fitted last is held against the card.</summary>
public sealed class FittedPartsTests
{
    private static readonly ChainCard Card = new() { Name = "K-1", PitchMm = 25.4, Pitches = 120, SprocketTeeth = [17, 75] };

    [Fact]
    public void The_chain_and_the_sprocket_fitted_last_are_told_where_the_card_says_otherwise() =>
        Assert.Equal(
            new FittedParts(118, 19),
            FittedParts.Unlike(Card, [Fitted(120), Sprocket(17), Fitted(118), Sprocket(19)]));

    [Fact]
    public void Nothing_is_told_of_what_stands_on_the_card_or_was_not_counted()
    {
        var nothing = new FittedParts(null, null);
        Assert.Equal(nothing, FittedParts.Unlike(Card, []));
        Assert.Equal(nothing, FittedParts.Unlike(Card, [Fitted(118), Sprocket(19), Fitted(120), Sprocket(75)]));
        Assert.Equal(nothing, FittedParts.Unlike(Card, [Fitted(118), Sprocket(19), Fitted(null), Sprocket(null)]));
    }

    [Fact]
    public void A_card_without_a_count_is_filled_in_by_what_was_fitted() =>
        Assert.Equal(
            new FittedParts(118, 19),
            FittedParts.Unlike(Card with { Pitches = null, SprocketTeeth = [] }, [Fitted(118), Sprocket(19)]));

    private static ChainEvent Fitted(int? pitches) =>
        new() { Chain = "K-1", Kind = ChainEventKind.Replacement, NewPitches = pitches };

    private static ChainEvent Sprocket(int? teeth) =>
        new() { Chain = "K-1", Kind = ChainEventKind.SprocketReplaced, NewTeeth = teeth };
}
