using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Tests.Running;

public sealed class RunningTimeTests
{
    private static readonly DateOnly FirstDay = new(2023, 1, 1);

    private static RunningTime Running(ShiftPattern? shifts = null) =>
        new(shifts ?? ShiftPattern.FiveDays, Chance.For(1, "running"), FirstDay);

    [Fact]
    public void Hours_never_run_backwards_not_even_when_autumn_repeats_an_hour()
    {
        var running = Running(ShiftPattern.RoundTheClock);
        var last = 0.0;
        var midnight = new DateTimeOffset(2023, 10, 28, 0, 0, 0, TimeSpan.Zero);
        for (var moment = midnight; moment < midnight.AddDays(3); moment = moment.AddMinutes(15))
        {
            var hours = running.HoursAt(MillClock.At(moment));
            Assert.True(hours > last, $"{moment}: {hours} after {last}");
            last = hours;
        }
    }

    [Fact]
    public void A_moment_and_its_hours_belong_together_to_the_minute()
    {
        var running = Running();
        for (var hours = 0.5; hours < 9_000; hours += 37.3)
            Assert.InRange(hours - running.HoursAt(running.MomentAt(hours)), -1e-6, 1.01 / 60);
    }

    [Fact]
    public void Nothing_runs_on_a_weekend_of_a_five_day_line_at_christmas_or_in_the_summer_shutdown()
    {
        var running = Running();
        Assert.Equal(0, HoursOn(running, new DateOnly(2024, 6, 15)));
        Assert.Equal(0, HoursOn(running, new DateOnly(2024, 12, 27)));
        Assert.Equal(0, HoursOn(running, new DateOnly(2024, 8, 16))); // the first Monday was the 5th
        Assert.True(HoursOn(running, new DateOnly(2024, 8, 19)) > 0);
    }

    [Fact]
    public void Every_line_of_the_mill_runs_between_5000_and_8000_hours_a_year()
    {
        foreach (var line in Mill.Lines)
        {
            var running = Running(line.Shifts);
            var year = running.HoursAt(new DateTimeOffset(2025, 1, 1, 0, 0, 0, TimeSpan.FromHours(1)))
                - running.HoursAt(new DateTimeOffset(2024, 1, 1, 0, 0, 0, TimeSpan.FromHours(1)));
            Assert.InRange(year, 5_000, 8_000);
        }
    }

    [Fact]
    public void Before_the_first_day_nothing_has_run() => Assert.Equal(0, Running().HoursAt(A.HistoryEnd.AddYears(-20)));

    private static double HoursOn(RunningTime running, DateOnly day)
    {
        var midnight = new DateTimeOffset(day, TimeOnly.MinValue, TimeSpan.FromHours(1));
        return running.HoursAt(midnight.AddDays(1)) - running.HoursAt(midnight);
    }
}
