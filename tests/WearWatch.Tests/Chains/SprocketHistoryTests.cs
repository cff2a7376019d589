using WearWatch.Chains;

namespace WearWatch.Tests.Chains;

/// <summary>Oracle: counting by hand. That new sprockets lie ready for a third chain is common practice.</summary>
public sealed class SprocketHistoryTests
{
    private static readonly ChainCard card = new() { Name = "K", PitchMm = 25.4 };

    [Fact]
    public void Chains_are_counted_from_the_last_new_sprocket_on()
    {
        Assert.Equal(new SprocketHistory(null, 1), SprocketHistory.Of(card, []));
        Assert.Equal(
            new SprocketHistory(Day(20), 3),
            SprocketHistory.Of(card, [Swap(10), Sprocket(20), Swap(30), Swap(40)]));
        Assert.True(SprocketHistory.Of(card, [Sprocket(20), Swap(30), Swap(40)]).AreToLieReady);
        Assert.False(SprocketHistory.Of(card, [Swap(10), Sprocket(20), Swap(30)]).AreToLieReady);
    }

    [Fact]
    public void A_chain_and_a_sprocket_of_one_stop_run_together_in_either_order()
    {
        Assert.Equal(1, SprocketHistory.Of(card, [Swap(10), Sprocket(10)]).ChainsRun);
        Assert.Equal(1, SprocketHistory.Of(card, [Sprocket(10), Swap(10)]).ChainsRun);
    }

    [Fact]
    public void It_says_how_many_and_since_when()
    {
        Assert.Equal(
            "2 chains have run on them since 3 May 2026.", new SprocketHistory(Day(1), 2).Words("3 May 2026").ToString());
        Assert.Contains("not recorded", new SprocketHistory(null, 1).Words("").ToString(), StringComparison.Ordinal);
    }

    private static ChainEvent Swap(int day) => new() { Chain = "K", Kind = ChainEventKind.Replacement, At = Day(day) };

    private static ChainEvent Sprocket(int day) => new() { Chain = "K", Kind = ChainEventKind.SprocketReplaced, At = Day(day) };

    private static DateTimeOffset Day(int day) => new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero).AddDays(day);
}
