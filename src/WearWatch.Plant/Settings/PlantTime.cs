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
    public DateTimeOffset StartOf(DateOnly date)
    {
        var wall = date.ToDateTime(default);
        return new DateTimeOffset(wall, Zone.GetUtcOffset(wall));
    }

    /// <summary>A date such as 14 Jan 2027.</summary>
    public string Day(DateTimeOffset at) => Day(DateOf(at));

    /// <summary>A date such as 14 Jan 2027.</summary>
    public static string Day(DateOnly date) => date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A date and time such as 14 Jan 2027 06:30.</summary>
    public string Moment(DateTimeOffset at) =>
        TimeZoneInfo.ConvertTime(at, Zone).ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);

    /// <summary>How far a moment lies away, such as <c>3 days ago</c> or <c>in 5 weeks</c>.</summary>
    public string Away(DateTimeOffset at)
    {
        var days = DateOf(at).DayNumber - Today.DayNumber;
        var (count, unit) = Math.Abs(days) switch
        {
            < 14 => (Math.Abs(days), "day"),
            < 60 => ((int)Math.Round(Math.Abs(days) / 7.0), "week"),
            < 730 => ((int)Math.Round(Math.Abs(days) / 30.44), "month"),
            _ => ((int)Math.Round(Math.Abs(days) / 365.25), "year"),
        };
        if (days == 0) return "today";
        var words = count == 1 ? $"1 {unit}" : $"{count} {unit}s";
        return days > 0 ? "in " + words : words + " ago";
    }
}
