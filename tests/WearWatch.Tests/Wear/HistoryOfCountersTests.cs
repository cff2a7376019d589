using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>What a history makes of hour counters: resets, falls, roll-overs.</summary>
public sealed class HistoryOfCountersTests
{
    // Two places of one visit, the second dated a day too early: its counter is ahead by the minutes in between.
    [Fact]
    public void A_counter_that_falls_by_its_rounding_was_not_set_back()
    {
        var history = ChainHistory.Take(A.Card(fittedCounter: 0),
            [A.Reading(34_000, 1.0), A.Reading(34_235.7, 1.1), A.Reading(34_235.4, 1.1), A.Reading(34_500, 1.2)], []);

        Assert.Equal(34_500, history.Current.RunningHours, 1.0);
    }

    [Fact]
    public void Hours_count_from_the_counter_at_fitting() =>
        Assert.Equal(
            [200, 700], Hours(ChainHistory.Take(A.Card(fittedCounter: 5000), [A.Reading(5200, 0.3), A.Reading(5700, 0.4)], [])));

    [Fact]
    public void Over_a_recorded_reset_the_hours_go_on_from_the_value_before() =>
        Assert.Equal(
            [900, 1200], Hours(ChainHistory.Take(A.Card(), [A.Reading(900, 0.3), A.Reading(200, 0.4)], [A.Reset(1000)])));

    [Fact]
    public void A_recorded_reset_counts_even_where_the_next_reading_shows_more_than_before() =>
        Assert.Equal(
            [900, 2500], Hours(ChainHistory.Take(A.Card(), [A.Reading(900, 0.3), A.Reading(1500, 0.6)], [A.Reset(1000)])));

    // docs/method.md: add max(new value, median of the earlier gaps).
    [Theory]
    [InlineData(100, 2500)]
    [InlineData(800, 2800)]
    public void An_unrecorded_fall_of_the_counter_adds_what_it_shows_and_no_less_than_the_usual_gap(double counter, double hours)
    {
        var history = ChainHistory.Take(
            A.Card(), [A.Reading(500, 0.3), A.Reading(1000, 0.4), A.Reading(1500, 0.5), A.Reading(2000, 0.6),
                A.Reading(counter, 0.7)], []);

        Assert.Equal(hours, history.Current.RunningHours);
    }

    [Fact]
    public void A_counter_of_five_digits_that_rolls_over_loses_no_hour() =>
        Assert.Equal(
            [9000, 9400, 9800, 10_200],
            Hours(ChainHistory.Take(
                A.Card(fittedCounter: 90_500),
                [A.Reading(99_500, 1.0), A.Reading(99_900, 1.1), A.Reading(300, 1.2), A.Reading(700, 1.3)], [])));

    [Fact]
    public void A_single_counter_value_that_the_next_reading_passes_over_is_held_back()
    {
        var history = ChainHistory.Take(
            A.Card(), [A.Reading(500, 0.3), A.Reading(1000, 0.4), A.Reading(150, 0.5), A.Reading(2000, 0.6)], []);

        Assert.Equal([500, 1000, 2000], Hours(history));
        Assert.Contains("150 h", Assert.Single(history.HeldBack).Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_with_a_date_and_no_counter_takes_its_hours_from_the_readings_about_it()
    {
        Reading[] readings =
        [
            A.Reading(1000, 0.5, A.Monday), A.Reading(null, 0.6, A.Monday.AddDays(30)),
                A.Reading(1400, 0.7, A.Monday.AddDays(40)),
        ];

        Assert.Equal([1000, 1300, 1400], Hours(ChainHistory.Take(A.Card(), readings, [])));
    }

    [Fact]
    public void Dates_alone_become_hours_by_the_production_calendar()
    {
        var oneShift = new ProductionCalendar(
            [.. Enumerable.Range(1, 5).Select(d => new Shift((DayOfWeek)d, new(6, 0), TimeSpan.FromHours(8)))]);
        var card = A.Card(fittedCounter: null, fittedAt: A.Monday);

        var history = ChainHistory.Take(
            card, [A.Reading(null, 0.3, A.Monday.AddDays(7)), A.Reading(null, 0.4, A.Monday.AddDays(21))], [], oneShift);

        Assert.Equal([40, 120], Hours(history));
    }

    [Fact]
    public void An_event_with_a_date_goes_by_its_date()
    {
        var history = ChainHistory.Take(
            A.Card(), [A.Reading(1000, 1.9, A.Monday), A.Reading(1300, 0.3, A.Monday.AddDays(20))],
            [A.Replacement(null, A.Monday.AddDays(10))]);

        Assert.Equal([150], Hours(history));
    }

    private static IEnumerable<double> Hours(ChainHistory history) =>
        history.Current.Observations.Select(o => Math.Round(o.HoursSinceFitting, 6));
}
