using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class ConditionWordsTests
{
    [Theory]
    [InlineData(Condition.WithinLimit, "within limit", "within_limit", SignalColour.Green)]
    [InlineData(Condition.PlanASwap, "plan a swap", "plan_a_swap", SignalColour.Yellow)]
    [InlineData(Condition.SwapNow, "swap now", "swap_now", SignalColour.Red)]
    [InlineData(Condition.NotKnown, "not known", "not_known", SignalColour.Grey)]
    public void A_chain_that_lifts_nothing_has_the_four_words_of_the_plant(
        Condition condition, string words, string wire, SignalColour colour)
    {
        var told = ConditionWords.Of(condition, holdsLoad: false);
        Assert.Equal((words, wire, colour), (told.Words.ToString(), told.Wire, told.Colour));
    }

    // Source of the words: docs/safety.md. Green is the colour of what may run on, by IEC 60073 (from memory).
    [Theory]
    [InlineData(Condition.WithinLimit, "wear within limits; not a release for use")]
    [InlineData(Condition.PlanASwap, "limit for planning reached: a competent person sets the date")]
    [InlineData(Condition.SwapNow, "take out of use")]
    [InlineData(Condition.NotKnown, "cannot be judged")]
    public void A_chain_that_lifts_has_words_of_its_own_and_is_never_green(Condition condition, string words)
    {
        var told = ConditionWords.Of(condition, holdsLoad: true);
        Assert.Equal(words, told.Words.ToString());
        Assert.NotEqual(SignalColour.Green, told.Colour);
        Assert.DoesNotContain("swap", told.Words + told.Wire + told.Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_condition_is_told_in_both_ways_and_each_word_means_one_thing()
    {
        Assert.Equal(2 * Enum.GetValues<Condition>().Length, ConditionWords.All.Count);
        Assert.Equal(ConditionWords.All.Count, ConditionWords.All.Select(w => w.Wire).Distinct().Count());
        Assert.Equal(ConditionWords.All.Count, ConditionWords.All.Select(w => w.Words).Distinct().Count());
        Assert.All(ConditionWords.All, words =>
        {
            Assert.Equal(words, ConditionWords.Find(words.Wire));
            Assert.Equal(words, ConditionWords.Find(words.Style));
            Assert.EndsWith(".", words.Meaning.ToString(), StringComparison.Ordinal);
        });
        Assert.Null(ConditionWords.Find("safe"));
        Assert.Null(ConditionWords.Find(null));
    }
}
