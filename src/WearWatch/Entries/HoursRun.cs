namespace WearWatch.Entries;

/// <summary>How far an hour counter went between two dated entries, and how far the calendar let expect.</summary>
/// <param name="From">The earlier entry.</param>
/// <param name="To">The later one.</param>
/// <param name="CounterHours">Hours that the counter went.</param>
/// <param name="CalendarHours">Hours by production calendar or recorded running; more than zero.</param>
public readonly record struct HoursRun(DateTimeOffset From, DateTimeOffset To, double CounterHours, double CalendarHours)
{
    /// <summary>The share of the calendar's hours that the counter went.</summary>
    public double Ratio => CounterHours / CalendarHours;

    /// <summary>The share of a stretch of time that this covers, 0 to 1.</summary>
    public double CoverOf(DateTimeOffset from, DateTimeOffset to)
    {
        var (begin, end) = (From > from ? From : from, To < to ? To : to);
        return to <= from ? 0 : Math.Clamp((end - begin) / (to - from), 0, 1);
    }
}
