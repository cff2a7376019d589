using System.Globalization;

namespace WearWatch.Plant.Settings;

/// <summary>A moment and the plant's time zone: what turns stored moments into the words on a screen.</summary>
/// <param name="Now">The moment for which the screen is drawn.</param>
/// <param name="Zone">The plant's time zone.</param>
public sealed record PlantTime(DateTimeOffset Now, TimeZoneInfo Zone)
{
    /// <summary>The plant's date today.</summary>
    public DateOnly Today => DateOf(Now);

    /// <summary>The plant's date at a moment.</summary>
    public DateOnly DateOf(DateTimeOffset at) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, Zone).DateTime);

    /// <summary>The Monday of the week of a date.</summary>
    public static DateOnly MondayOf(DateOnly date) => date.AddDays(-(((int)date.DayOfWeek + 6) % 7));

    /// <summary>The moment at which a plant date begins.</summary>
    public DateTimeOffset StartOf(DateOnly date) => At(date, default);

    /// <summary>The plant's time of day.</summary>
    public TimeOnly TimeOfDay => TimeOnly.FromDateTime(TimeZoneInfo.ConvertTime(Now, Zone).DateTime);

    /// <summary>The moment at which a plant date has this time of day; where the clock jumps over it, as if it did not.</summary>
    public DateTimeOffset At(DateOnly date, TimeOnly timeOfDay)
    {
        var wall = date.ToDateTime(timeOfDay);
        return new DateTimeOffset(wall, Zone.GetUtcOffset(wall));
    }

    /// <summary>A date such as 14 Jan 2027.</summary>
    public string Day(DateTimeOffset at) => Day(DateOf(at));

    /// <summary>A date such as 14 Jan 2027.</summary>
    public static string Day(DateOnly date) => DateWords.Day(date, CultureInfo.CurrentCulture);

    /// <summary>A date and time such as 14 Jan 2027 06:30.</summary>
    public string Moment(DateTimeOffset at) =>
        DateWords.Moment(TimeZoneInfo.ConvertTime(at, Zone).DateTime, CultureInfo.CurrentCulture);

    /// <summary>How far a moment lies away, such as <c>3 days ago</c> or <c>in 5 weeks</c>.</summary>
    public Phrase Away(DateTimeOffset at)
    {
        var days = DateOf(at).DayNumber - Today.DayNumber;
        if (days == 0) return $"today";
        return (days > 0, Math.Abs(days)) switch
        {
            (true, 1) => $"in 1 day",
            (false, 1) => $"1 day ago",
            (true, < 14 and var n) => $"in {n} days",
            (false, < 14 and var n) => $"{n} days ago",
            (true, < 60 and var n) => $"in {Math.Round(n / 7.0):0} weeks",
            (false, < 60 and var n) => $"{Math.Round(n / 7.0):0} weeks ago",
            (true, < 730 and var n) => $"in {Math.Round(n / 30.44):0} months",
            (false, < 730 and var n) => $"{Math.Round(n / 30.44):0} months ago",
            (true, var n) => $"in {Math.Round(n / 365.25):0} years",
            (false, var n) => $"{Math.Round(n / 365.25):0} years ago",
        };
    }
}
