using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class ChainHistoryTests
{
    [Fact]
    public void Each_life_has_the_lot_that_its_own_fitting_told()
    {
        var card = A.Card() with { Lot = "A-1" };
        var history = ChainHistory.Take(
            card, [A.Reading(1000, 0.5), A.Reading(2000, 1.5), A.Reading(2600, 0.3), A.Reading(5200, 0.3)],
            [A.Replacement(2100) with { Lot = "B-2" }, A.Replacement(5000)]);

        Assert.Equal(["A-1", "B-2", ""], history.Lives.Select(l => l.Lot));
    }

    [Fact]
    public void A_fitting_told_on_the_card_and_as_an_event_has_the_lot_that_either_tells()
    {
        var card = A.Card(fittedCounter: 2100) with { Lot = "A-1" };
        Assert.Equal("A-1", ChainHistory.Take(card, [A.Reading(2600, 0.3)], [A.Replacement(2100)]).Current.Lot);
        Assert.Equal(
            "B-2", ChainHistory.Take(card, [A.Reading(2600, 0.3)], [A.Replacement(2100) with { Lot = "B-2" }]).Current.Lot);
    }

    [Fact]
    public void A_recorded_replacement_begins_a_new_life_that_counts_from_it()
    {
        var history = ChainHistory.Take(
            A.Card(), [A.Reading(1000, 0.5), A.Reading(2000, 1.5), A.Reading(2600, 0.3)], [A.Replacement(2100)]);

        Assert.Equal(2, history.Lives.Count);
        Assert.Equal(
            (true, 2100.0, true), (history.Lives[0].FittingRecorded, history.Lives[0].RunningHours, history.Lives[0].Removed));
        Assert.Equal([500], Hours(history));
    }

    [Fact]
    public void The_replacement_that_the_card_counts_from_is_one_and_the_same()
    {
        var history =
            ChainHistory.Take(A.Card(fittedCounter: 2100), [A.Reading(2000, 1.5), A.Reading(2600, 0.3)], [A.Replacement(2100)]);

        Assert.Equal(2, history.Lives.Count);
        Assert.False(history.Lives[0].FittingRecorded);
        Assert.Equal([500], Hours(history));
    }

    [Theory]
    [InlineData(0.1, 1)]
    [InlineData(2.6, 0)]
    public void A_reading_at_the_very_counter_of_the_replacement_is_of_the_chain_it_looks_like(double percent, int newOnes)
    {
        var history = ChainHistory.Take(A.Card(), [A.Reading(1000, 1.2), A.Reading(2100, percent)], [A.Replacement(2100)]);

        Assert.Equal(newOnes, history.Current.Observations.Count);
    }

    [Fact]
    public void A_chain_replaced_after_its_last_reading_has_a_life_without_readings()
    {
        var history = ChainHistory.Take(A.Card(), [A.Reading(1000, 1.2)], [A.Replacement(2100)]);

        Assert.Empty(history.Current.Observations);
        Assert.Equal(2100, history.Lives[0].RunningHours);
    }

    [Fact]
    public void Where_fittings_are_not_recorded_a_fall_that_stays_is_a_new_chain()
    {
        Reading[] readings =
            [A.Reading(1000, 1.9), A.Reading(2000, 2.4), A.Reading(3000, 0.35), A.Reading(3500, 0.45), A.Reading(4000, 0.55)];

        var history = ChainHistory.Take(A.Card(fittedCounter: null), readings, []);

        Assert.Equal(2, history.Lives.Count);
        Assert.True(history.Current.FittingKnown);
        Assert.False(history.Current.FittingRecorded);
        Assert.InRange(history.Current.Observations[0].HoursSinceFitting, 50, 950);
    }

    [Fact]
    public void One_low_reading_is_not_a_new_chain() =>
        Assert.Single(ChainHistory.Take(
            A.Card(fittedCounter: null), [A.Reading(1000, 1.9), A.Reading(2000, 2.4), A.Reading(3000, 0.3), A.Reading(3500, 2.8)],
            []).Lives);

    [Fact]
    public void Against_a_recorded_fitting_a_first_reading_that_was_misread_does_not_speak() =>
        Assert.Single(ChainHistory.Take(
            A.Card(), [A.Reading(300, 1.4), A.Reading(900, 0.3), A.Reading(1500, 0.4), A.Reading(2100, 0.5)], []).Lives);

    [Fact]
    public void Shortening_takes_nothing_off_the_elongation_of_a_pitch()
    {
        Reading[] readings = [A.Reading(1000, 0.5), A.Reading(2000, 0.9)];
        var with = ChainHistory.Take(A.Card(), readings, [A.Event(ChainEventKind.Shortened, 1500, 1500)]);

        Assert.Equal(ChainHistory.Take(A.Card(), readings, []).Current.Observations, with.Current.Observations);
    }

    [Fact]
    public void Of_several_places_the_most_worn_governs()
    {
        var history = ChainHistory.Take(
            A.Card(), [A.Reading(1000, 0.50, place: "a"), A.Reading(1000, 0.62, place: "b"), A.Reading(1000, 0.55, place: "c")],
            []);

        Assert.Equal(0.62, Assert.Single(history.Current.Observations).ElongationPercent, 1e-9);
    }

    [Fact]
    public void Of_several_strands_the_most_worn_governs()
    {
        var history = ChainHistory.Take(
            A.Card(), [A.Reading(1000, 0.50, strand: 1), A.Reading(1000, 0.62, strand: 2), A.Reading(1000.3, 0.55, strand: 3)],
            []);

        var observation = Assert.Single(history.Current.Observations);
        Assert.Equal((1, 0.62), (observation.ReadingIndex, Math.Round(observation.ElongationPercent, 6)));
        Assert.Equal([0, 2], history.Current.Outdone);
        Assert.Equal((1, 2), (history.Current.Strands!.LeastStrand, history.Current.Strands.MostStrand));
    }

    [Fact]
    public void Strands_are_compared_within_the_last_visit_only() =>
        Assert.Null(
            ChainHistory.Take(A.Card(), [A.Reading(1000, 0.2, strand: 1), A.Reading(2000, 0.9, strand: 2)], []).Current.Strands);

    [Fact]
    public void A_place_read_twice_at_the_same_hours_counts_twice() =>
        Assert.Equal(
            2, ChainHistory.Take(A.Card(), [A.Reading(1000, 0.50), A.Reading(1000, 0.52)], []).Current.Observations.Count);

    [Fact]
    public void The_same_row_twice_is_held_back_once() =>
        Assert.Equal(1,
            Assert.Single(ChainHistory.Take(A.Card(), [A.Reading(1000, 0.50), A.Reading(1000, 0.50)], []).HeldBack).ReadingIndex);

    private static IEnumerable<double> Hours(ChainHistory history) =>
        history.Current.Observations.Select(o => Math.Round(o.HoursSinceFitting, 6));
}
