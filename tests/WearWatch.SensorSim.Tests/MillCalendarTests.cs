using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Tests;

public sealed class MillCalendarTests
{
    // Oracle: the hours that the simulated lines do run in the three years. The utilisation is a mean over positions and an
    // expectation over breakdowns; 1 % covers the chance in it.
    [Fact]
    public void The_utilisation_told_is_the_one_that_is_run()
    {
        var mill = A.Mill();
        var (from, to) = (DateOnly.FromDateTime(mill.StartsAt.Date), DateOnly.FromDateTime(mill.EndsAt.Date));
        var openHours = 24.0 * (to.DayNumber - from.DayNumber - MillCalendar.ShutdownDays(from, to).Count());
        var run = mill.Histories.Average(h => h.Span.EndHour - h.Span.StartHour);

        Assert.InRange(run / openHours / MillCalendar.Utilisation, 0.99, 1.01);
    }

    [Fact]
    public void A_year_has_two_summer_weeks_and_nine_days_over_the_new_year_of_shutdown()
    {
        var days = MillCalendar.ShutdownDays(new DateOnly(2025, 1, 1), new DateOnly(2026, 1, 1)).ToList();

        Assert.Equal(14 + 9, days.Count);
        Assert.Contains(new DateOnly(2025, 8, 4), days);
        Assert.DoesNotContain(new DateOnly(2025, 8, 18), days);
    }

    [Fact]
    public void The_time_zone_named_is_the_one_in_which_times_are_told() => Assert.All(
        Enumerable.Range(0, 400),
        day =>
        {
            var moment = A.HistoryEnd.AddDays(day).AddHours(day % 24);
            var zone = TimeZoneInfo.FindSystemTimeZoneById(MillCalendar.TimeZoneId);
            Assert.Equal(zone.GetUtcOffset(moment), MillClock.At(moment).Offset);
        });
}
