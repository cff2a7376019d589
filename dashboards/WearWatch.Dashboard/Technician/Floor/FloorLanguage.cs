using WearWatch.Dashboard.Kit.Language;

namespace WearWatch.Dashboard.Technician.Floor;

/// <summary>A language as a phone keeps it: its figures, and its translations of the floor's texts.</summary>
internal sealed record FloorLanguage
{
    /// <summary>Its ISO 639-1 code.</summary>
    public required string Code { get; init; }

    /// <summary>Before the decimals.</summary>
    public required string DecimalSign { get; init; }

    /// <summary>Between groups of three digits.</summary>
    public required string GroupSign { get; init; }

    /// <summary>Twelve names of months.</summary>
    public required IReadOnlyList<string> Months { get; init; }

    /// <summary>Their short forms.</summary>
    public required IReadOnlyList<string> MonthsShort { get; init; }

    /// <summary>A date, such as <c>d MMM yyyy</c>.</summary>
    public required string DayPattern { get; init; }

    /// <summary>The texts by the English ones; none for English.</summary>
    public required IReadOnlyDictionary<string, string> Texts { get; init; }

    /// <summary>Of all that a language has, the phone gets what its scripts ask for.</summary>
    public static FloorLanguage Of(Tongue tongue, IReadOnlyCollection<string> keys)
    {
        var (numbers, dates) = (tongue.Culture.NumberFormat, tongue.Culture.DateTimeFormat);
        return new()
        {
            Code = tongue.Code,
            DecimalSign = numbers.NumberDecimalSeparator,
            GroupSign = numbers.NumberGroupSeparator,
            Months = dates.MonthNames[..12],
            MonthsShort = dates.AbbreviatedMonthNames[..12],
            DayPattern = dates.LongDatePattern,
            Texts = keys.Select(k => KeyValuePair.Create(k, tongue.Text(k))).Where(t => t.Key != t.Value).ToDictionary(),
        };
    }
}
