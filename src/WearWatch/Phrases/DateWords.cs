using System.Globalization;

namespace WearWatch.Phrases;

/// <summary>Dates for people, in the one form of a language: its long, month-day and year-month patterns.</summary>
/// <remarks>Files, addresses and the API write dates by ISO 8601 instead.</remarks>
public static class DateWords
{
    /// <summary>A date such as 14 Jan 2027.</summary>
    public static string Day(DateOnly date, CultureInfo culture) =>
        date.ToString(IsPlain(culture) ? "d MMM yyyy" : culture.DateTimeFormat.LongDatePattern, culture);

    /// <summary>A date of a year that is known from around it, such as 14 Jan.</summary>
    public static string DayOfYear(DateOnly date, CultureInfo culture) =>
        date.ToString(IsPlain(culture) ? "d MMM" : culture.DateTimeFormat.MonthDayPattern, culture);

    /// <summary>A month such as Jan 2027.</summary>
    public static string Month(DateOnly date, CultureInfo culture) =>
        date.ToString(IsPlain(culture) ? "MMM yyyy" : culture.DateTimeFormat.YearMonthPattern, culture);

    /// <summary>A moment of a place such as 14 Jan 2027 06:30.</summary>
    public static string Moment(DateTime wall, CultureInfo culture) =>
        $"{Day(DateOnly.FromDateTime(wall), culture)} {wall.ToString("HH:mm", culture)}";

    // The command line, logs and background work have no language: they write English.
    private static bool IsPlain(CultureInfo culture) => culture.Name.Length == 0;
}
