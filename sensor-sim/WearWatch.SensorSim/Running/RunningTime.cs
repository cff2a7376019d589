using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Running;

/// <summary>The hours that a line has run since a first day, as far into the future as anybody asks.</summary>
/// <remarks>Counted in winter time throughout, so that the hour that autumn repeats does not turn the count back.</remarks>
internal sealed class RunningTime(ShiftPattern shifts, Chance chance, DateOnly firstDay)
{
    private static readonly TimeSpan WinterOffset = TimeSpan.FromHours(1);

    /// <summary>Hours run before day 0, 1, 2, ...</summary>
    private readonly List<double> before = [0];

    /// <summary>The hours run since the first day began; zero before that.</summary>
    public double HoursAt(DateTimeOffset moment)
    {
        var wall = moment.ToOffset(WinterOffset);
        var day = DateOnly.FromDateTime(wall.Date).DayNumber - firstDay.DayNumber;
        return day < 0 ? 0 : HoursBefore(day) + (HoursBefore(day + 1) - HoursBefore(day)) * wall.TimeOfDay.TotalDays;
    }

    /// <summary>The moment at which so many hours have been run, to the minute.</summary>
    public DateTimeOffset MomentAt(double hours)
    {
        while (before[^1] <= hours) HoursBefore(before.Count);
        var next = before.BinarySearch(hours);
        // An exact hit may be any of several idle days; the day wanted is the one on which the hours are run through.
        var day = next < 0 ? ~next - 1 : next;
        while (day + 1 < before.Count - 1 && before[day + 1] <= hours) day++;
        var share = (hours - before[day]) / (before[day + 1] - before[day]);
        var wall = firstDay.AddDays(day).ToDateTime(TimeOnly.MinValue).AddMinutes(Math.Floor(share * 24 * 60));
        return MillClock.At(new DateTimeOffset(wall, WinterOffset));
    }

    private double HoursBefore(int day)
    {
        while (before.Count <= day)
            before.Add(before[^1] + HoursOn(firstDay.AddDays(before.Count - 1)));
        return before[day];
    }

    private double HoursOn(DateOnly day) => ShiftPattern.AvailabilityOfOneDay(chance) * shifts.PlannedHoursOn(day);
}
