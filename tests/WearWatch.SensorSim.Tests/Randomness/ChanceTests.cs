using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Tests.Randomness;

public sealed class ChanceTests
{
    // Oracle: the five numbers that rosettacode.org, "Pseudo-random numbers/Splitmix64", gives for seed 1234567 (from memory).
    [Fact]
    public void The_generator_gives_the_published_numbers()
    {
        var chance = Chance.FromState(1234567);

        ulong[] published =
        [
            6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821,
        ];
        Assert.Equal(published, published.Select(_ => chance.Bits()));
    }

    [Fact]
    public void The_same_words_give_the_same_stream() =>
        Assert.Equal(Chance.For(3, "a", "b").Bits(), Chance.For(3, "a", "b").Bits());

    [Fact]
    public void Other_words_another_seed_or_another_split_give_another_stream()
    {
        ulong[] firsts =
        [
            Chance.For(3, "a", "b").Bits(), Chance.For(4, "a", "b").Bits(), Chance.For(3, "ab").Bits(),
            Chance.For(3, "b", "a").Bits(), Chance.For(-3, "a", "b").Bits(),
        ];

        Assert.Equal(firsts.Length, firsts.Distinct().Count());
    }

    // Oracle: mean 0, variance 1, fourth moment 3 of the normal distribution. With 100,000 draws their standard errors are
    // 0.003, 0.0045 and 0.031; four of them are allowed.
    [Fact]
    public void Normal_draws_have_the_moments_of_the_normal_distribution()
    {
        var chance = Chance.For(1, "moments");
        var draws = Enumerable.Range(0, 100_000).Select(_ => chance.Normal(0, 1)).ToArray();

        Assert.InRange(draws.Average(), -0.013, 0.013);
        Assert.InRange(draws.Average(x => x * x), 0.982, 1.018);
        Assert.InRange(draws.Average(x => x * x * x * x), 2.88, 3.12);
    }

    [Fact]
    public void Whole_numbers_reach_both_ends_and_no_farther()
    {
        var chance = Chance.For(1, "whole");
        Assert.Equal([2, 3, 4], Enumerable.Range(0, 200).Select(_ => chance.Whole(2, 4)).Distinct().Order());
    }

    [Fact]
    public void A_shuffled_deck_holds_the_same_cards()
    {
        var deck = Chance.For(1, "deck").Shuffled(Enumerable.Range(0, 52));

        Assert.NotEqual(Enumerable.Range(0, 52), deck);
        Assert.Equal(Enumerable.Range(0, 52), deck.Order());
    }
}
