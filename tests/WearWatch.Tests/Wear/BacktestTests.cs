using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class BacktestTests
{
    private static readonly Reading[] Readings = A.Readings(0.3, 300, 900, 1500, 2100, 2700, 3300, 3900);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    public void What_comes_later_changes_nothing_however_wild_it_is(int known)
    {
        Reading[] poisoned = [.. Readings.Take(known),
            .. Readings.Skip(known).Select((r, i) => A.Reading(99_999 - 40_000 * (i % 2), 7.9, pitches: 3))];

        var honest = Answer(Readings, [], known);
        var tempted = Answer(poisoned, [A.Reset(90_000, 12), A.Replacement(15), A.Replacement(95_000)], known);

        Assert.Equal(honest.PercentilesHours, tempted.PercentilesHours);
        Assert.Equal(honest.ProbabilityPassed, tempted.ProbabilityPassed);
    }

    [Fact]
    public void An_event_before_a_known_reading_is_known() =>
        Assert.NotEqual(
            Answer(Readings, [], 4).MiddleHours,
            Answer(Readings, [A.Replacement(2000)], 4).MiddleHours);

    [Fact]
    public void A_replacement_that_no_known_reading_has_followed_is_not_known() =>
        Assert.Equal(
            Answer(Readings, [], 4).PercentilesHours,
            Answer(Readings, [A.Replacement(2200)], 4).PercentilesHours);

    [Fact]
    public void Without_readings_the_prior_answers_from_fitting() =>
        Assert.Equal(
            WearFilter.Default.Forecast(WearTrack.AtFitting(WearPrior.Broad), 2).PercentilesHours,
            Answer(Readings, [], 0).PercentilesHours);

    [Fact]
    public void With_readings_only_of_the_chain_before_the_card_the_prior_answers_from_the_fitting_on_the_card()
    {
        Reading[] worn = [A.Reading(1000, 1.5), A.Reading(2000, 1.9)];

        var answer = Backtest.Answer(A.Card(fittedCounter: 2500), worn, [A.Replacement(2500)], WearPrior.Broad, 2, 2);

        Assert.Equal(Answer([], [], 0).PercentilesHours, answer.PercentilesHours);
    }

    private static WearForecast Answer(Reading[] readings, WearWatch.Chains.ChainEvent[] events, int known) =>
        Backtest.Answer(A.Card(), readings, events, WearPrior.Broad, limitPercent: 2, known);
}
