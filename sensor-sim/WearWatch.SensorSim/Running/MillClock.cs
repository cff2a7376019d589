namespace WearWatch.SensorSim.Running;

/// <summary>The wall clock of the mill: central European time.</summary>
/// <remarks>
/// One hour ahead of UTC, two from the last Sunday of March to the last Sunday of October, changing at 01:00 UTC. Kept here
/// rather than taken from the machine, since a machine without time zone data would write other bytes.
/// </remarks>
internal static class MillClock
{
    private static readonly TimeSpan Winter = TimeSpan.FromHours(1);
    private static readonly TimeSpan Summer = TimeSpan.FromHours(2);

    /// <summary>The same moment as the clock in the mill shows it.</summary>
    public static DateTimeOffset At(DateTimeOffset moment) => moment.ToOffset(IsSummer(moment.UtcDateTime) ? Summer : Winter);

    /// <summary>The moment at which the clock in the mill shows a date and a time of day.</summary>
    public static DateTimeOffset At(DateOnly day, TimeOnly time)
    {
        var wall = day.ToDateTime(time);
        return At(new DateTimeOffset(wall, IsSummer(wall - Winter) ? Summer : Winter));
    }

    private static bool IsSummer(DateTime utc) => utc >= ChangeIn(utc.Year, 3) && utc < ChangeIn(utc.Year, 10);

    private static DateTime ChangeIn(int year, int month)
    {
        var last = new DateTime(year, month, 31, 1, 0, 0, DateTimeKind.Unspecified);
        return last.AddDays(-(int)last.DayOfWeek);
    }
}
