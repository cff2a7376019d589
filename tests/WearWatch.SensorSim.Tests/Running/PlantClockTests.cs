using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Tests.Running;

public sealed class PlantClockTests
{
    // Oracle: Directive 2000/84/EC: last Sundays of March and October at 01:00 GMT; the dates are those of the calendar.
    [Theory]
    [InlineData(2024, 3, 31, 10, 27)]
    [InlineData(2025, 3, 30, 10, 26)]
    [InlineData(2026, 3, 29, 10, 25)]
    [InlineData(2027, 3, 28, 10, 31)]
    public void Summer_time_begins_and_ends_on_the_days_of_the_directive(int year, int month, int day, int endMonth, int endDay)
    {
        var begins = new DateTimeOffset(year, month, day, 1, 0, 0, TimeSpan.Zero);
        var ends = new DateTimeOffset(year, endMonth, endDay, 1, 0, 0, TimeSpan.Zero);

        Assert.Equal(1, MillClock.At(begins.AddTicks(-1)).Offset.TotalHours);
        Assert.Equal(2, MillClock.At(begins).Offset.TotalHours);
        Assert.Equal(2, MillClock.At(ends.AddTicks(-1)).Offset.TotalHours);
        Assert.Equal(1, MillClock.At(ends).Offset.TotalHours);
    }

    [Fact]
    public void A_date_and_a_time_of_day_are_those_on_the_wall()
    {
        Assert.Equal(
            new DateTimeOffset(2026, 7, 1, 7, 30, 0, TimeSpan.FromHours(2)),
            MillClock.At(new DateOnly(2026, 7, 1), new TimeOnly(7, 30)));
        Assert.Equal(
            new DateTimeOffset(2026, 1, 9, 7, 30, 0, TimeSpan.FromHours(1)),
            MillClock.At(new DateOnly(2026, 1, 9), new TimeOnly(7, 30)));
    }

    [Fact]
    public void The_moment_stays_the_same() => Assert.Equal(A.HistoryEnd.UtcDateTime, MillClock.At(A.HistoryEnd).UtcDateTime);
}
