using System.Globalization;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>How a language writes numbers and dates: the file <c>culture.json</c> of its folder.</summary>
/// <remarks>
/// Ours and not the operating system's, so that a screen, a print and a test read the same on every machine, also where no
/// culture data are installed.
/// </remarks>
internal sealed record CultureFigures
{
    /// <summary>The language's own name for itself.</summary>
    public required string Name { get; init; }

    /// <summary>Before the decimals.</summary>
    public required string DecimalSign { get; init; }

    /// <summary>Between groups of three digits.</summary>
    public required string GroupSign { get; init; }

    /// <summary>Twelve names of months, as they stand in a date.</summary>
    public required IReadOnlyList<string> Months { get; init; }

    /// <summary>Their short forms.</summary>
    public required IReadOnlyList<string> MonthsShort { get; init; }

    /// <summary>Seven short names of days, Sunday first.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>The first day of a week.</summary>
    public required DayOfWeek WeekStarts { get; init; }

    /// <summary>The size of paper for prints, such as A4.</summary>
    public required string Paper { get; init; }

    /// <summary>A date, such as <c>d MMM yyyy</c>.</summary>
    public required string DayPattern { get; init; }

    /// <summary>A date as a person types it, such as <c>d.M.yyyy</c>.</summary>
    public required string TypedDayPattern { get; init; }

    /// <summary>A date without its year.</summary>
    public required string DayOfYearPattern { get; init; }

    /// <summary>A month with its year.</summary>
    public required string MonthPattern { get; init; }

    /// <summary>The framework's culture of this code with these figures.</summary>
    public CultureInfo ToCulture(string code)
    {
        var culture = new CultureInfo(code);
        var (numbers, dates) = (culture.NumberFormat, culture.DateTimeFormat);
        numbers.NumberDecimalSeparator = numbers.PercentDecimalSeparator = numbers.CurrencyDecimalSeparator = DecimalSign;
        numbers.NumberGroupSeparator = numbers.PercentGroupSeparator = numbers.CurrencyGroupSeparator = GroupSign;
        dates.MonthNames = dates.MonthGenitiveNames = [.. Months, ""];
        dates.AbbreviatedMonthNames = dates.AbbreviatedMonthGenitiveNames = [.. MonthsShort, ""];
        dates.AbbreviatedDayNames = [.. Days];
        dates.FirstDayOfWeek = WeekStarts;
        // What the browser's date fields and Radzen's write; people read the long pattern.
        dates.ShortDatePattern = "yyyy-MM-dd";
        dates.LongDatePattern = DayPattern;
        dates.MonthDayPattern = DayOfYearPattern;
        dates.YearMonthPattern = MonthPattern;
        dates.ShortTimePattern = dates.LongTimePattern = "HH:mm";
        return CultureInfo.ReadOnly(culture);
    }
}
