using WearWatch.Rounds;
using WearWatch.Running;

namespace WearWatch.Tests.Rounds;

/// <summary>Dates by hand on a line that runs round the clock: an hour of running is an hour.</summary>
public sealed class RoundTests
{
    private static readonly DateTimeOffset Last = new(2026, 11, 1, 8, 0, 0, TimeSpan.Zero);
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(4 * 480.0, 20, "1 of 20 such chains is at the limit 1,920 h after")] // a quarter of 1,920 h is 20 days
    [InlineData(4 * 960.0, 40, "1 of 20 such chains")]
    [InlineData(20_000.0, 91, "far from the limit")]
    [InlineData(100.0, 7, "the limit is near")]
    [InlineData(0.0, 7, "the limit may have been passed")]
    public void A_quarter_of_the_way_to_the_early_end_is_run_between_two_readings(double earlyHours, int days, string why)
    {
        var due = MeasuringDue.For(Last, earlyHours, 1.5 * earlyHours, false, ProductionCalendar.AlwaysRunning, Now);
        Assert.Equal(Last.AddDays(days), due.DueAt);
        Assert.StartsWith(why, due.Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Doubt_brings_the_early_end_closer_and_is_named()
    {
        var sure = MeasuringDue.For(Last, 3000, 4000, false, ProductionCalendar.AlwaysRunning, Now);
        var doubtful = MeasuringDue.For(Last, 1500, 4000, false, ProductionCalendar.AlwaysRunning, Now);
        Assert.True(doubtful.DueAt < sure.DueAt);
        Assert.Contains("how fast it wears is doubtful", doubtful.Why.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("doubtful", sure.Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_without_reading_or_with_one_that_does_not_fit_is_measured_now()
    {
        Assert.Equal(Now, MeasuringDue.For(null, 9000, 9999, false, ProductionCalendar.AlwaysRunning, Now).DueAt);
        Assert.Equal(Now, MeasuringDue.For(Last, 9000, 9999, true, ProductionCalendar.AlwaysRunning, Now).DueAt);
    }

    [Fact]
    public void Where_the_limit_is_not_in_sight_a_quarter_of_a_year_may_pass() =>
        Assert.Equal(Last.AddDays(91), MeasuringDue.For(Last, null, null, false, ProductionCalendar.AlwaysRunning, Now).DueAt);

    [Fact]
    public void Hours_become_days_by_the_calendar_of_the_line()
    {
        // 96 h a week, Monday to Thursday: 480 h of running from a Sunday on end with the fifth Thursday.
        var calendar = new ProductionCalendar(
            [.. Enum.GetValues<DayOfWeek>().Where(d => d is not (DayOfWeek.Saturday or DayOfWeek.Sunday or DayOfWeek.Friday))
            .Select(d => new Shift(d, new TimeOnly(0, 0), TimeSpan.FromHours(24)))]);
        Assert.Equal(new DateTimeOffset(2026, 12, 4, 0, 0, 0, TimeSpan.Zero),
            MeasuringDue.For(Last, 4 * 480.0, 9000, false, calendar, Now).DueAt);
    }

    [Fact]
    public void A_chain_is_looked_at_once_a_month_and_at_once_when_nobody_ever_did()
    {
        Assert.Equal(Last.AddDays(30), InspectionDue.For(Last, holdsLoad: false, Now).DueAt);
        Assert.Equal(Now, InspectionDue.For(null, holdsLoad: false, Now).DueAt);
        // 29 CFR 1910.178(q)(7): a truck is examined before it is placed in service, at least daily.
        Assert.Equal(Last.AddDays(1), InspectionDue.For(Last, holdsLoad: true, Now).DueAt);
    }

    [Fact]
    public void Places_are_walked_as_people_count_them()
    {
        (string Line, string Place)[] stops = [("Press", "10"), ("Press", "2"), ("Dryer", "1"), ("Press", "1")];
        Assert.Equal(
            ["Dryer 1", "Press 1", "Press 2", "Press 10"],
            WalkingOrder.Of(stops, s => s.Line, s => s.Place, _ => null).Select(s => $"{s.Line} {s.Place}"));
    }

    [Fact]
    public void The_order_that_the_plant_has_set_goes_first_and_what_is_new_follows()
    {
        (string Line, string Place, int? Set)[] stops =
            [("Press", "A", 3), ("Press", "B", 2), ("Dryer", "A", null), ("Saw", "A", 1), ("Press", "0", null)];
        Assert.Equal(
            ["Saw A", "Press B", "Press A", "Press 0", "Dryer A"],
            WalkingOrder.Of(stops, s => s.Line, s => s.Place, s => s.Set).Select(s => $"{s.Line} {s.Place}"));
    }
}
