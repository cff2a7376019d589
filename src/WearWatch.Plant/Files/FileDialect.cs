using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace WearWatch.Plant.Files;

/// <summary>How a spreadsheet wrote a file: its letters, what stands between the columns, its decimal sign, its dates.</summary>
/// <remarks>Nothing is guessed: a number or a date that can be read in two ways is refused, with what to write instead.</remarks>
public sealed partial record FileDialect
{
    /// <summary>Our own form: UTF-8, commas, points, ISO 8601.</summary>
    public static FileDialect Ours { get; } = new();

    /// <summary>Its letters.</summary>
    public Encoding Letters { get; init; } = Encoding.UTF8;

    /// <summary>What stands between the columns.</summary>
    public char Separator { get; init; } = ',';

    /// <summary>The decimal sign; null when the file cannot tell it.</summary>
    public char? DecimalSign { get; init; } = '.';

    /// <summary>The order of its dates that are not by ISO 8601; null when it has none or cannot tell it.</summary>
    public DateOrder? Dates { get; init; }

    /// <summary>What is to be told of it in a sentence; empty for our own form.</summary>
    public string Words => this == Ours ? "" : "Read with " + string.Join(", ", new[]
    {
        Separator switch { ';' => "semicolons between the columns", '\t' => "tabs between the columns", _ => "" },
        DecimalSign switch { ',' => "the comma as decimal sign", null => "an unclear decimal sign", _ => "" },
        Dates switch
        {
            DateOrder.DayFirst => "the day before the month",
            DateOrder.MonthFirst => "the month before the day",
            _ => "",
        },
        Letters.CodePage == Encoding.UTF8.CodePage ? "" : $"{Letters.EncodingName} letters",
    }.Where(part => part.Length > 0)) + ".";

    /// <summary>Opens a file so written as UTF-8.</summary>
    public Stream Open(ImportFile file) => Letters.CodePage == Encoding.UTF8.CodePage
        ? file.Open()
        : Encoding.CreateTranscodingStream(file.Open(), Letters, Encoding.UTF8);

    /// <summary>A number as our own files have it, or why it cannot be told; a text that is no number stays as it is.</summary>
    public (string Text, string? Fault) Figure(string text)
    {
        if (Separator == ',' && DecimalSign == '.')
            return (text, text.Contains(',', StringComparison.Ordinal) ? PointWanted(text) : null);
        if (!text.AsSpan().ContainsAny('.', ',')) return (text, null);
        if (DecimalSign is not { } sign)
            return (text, $"'{text}': whether its sign is the decimal sign is not clear from this file. Write all digits.");
        var thousands = sign == ',' ? '.' : ',';
        if (!text.Contains(thousands, StringComparison.Ordinal)) return (text.Replace(sign, '.'), null);
        return Grouped(thousands).IsMatch(text)
            ? (text.Replace(thousands.ToString(), "", StringComparison.Ordinal).Replace(sign, '.'), null)
            : (text, $"'{text}' has a {NameOf(thousands)}, but the decimal sign of this file is the {NameOf(sign)}.");
    }

    /// <summary>A moment as our own files have it, or why it cannot be told; one by ISO 8601 stays as it is.</summary>
    public (string Text, string? Fault) Moment(string text)
    {
        if (WrittenDate().Match(text) is not { Success: true } date) return (text, null);
        var order = date.Groups["sign"].Value == "." ? DateOrder.DayFirst : Dates;
        if (order is null)
        {
            return (text,
                $"'{text}': whether the day or the month comes first is not clear from this file. Write it as 2026-04-03.");
        }

        var (day, month) = order == DateOrder.DayFirst ? ("first", "second") : ("second", "first");
        return (string.Create(CultureInfo.InvariantCulture,
            $"{date.Groups["year"].Value}-{Two(date.Groups[month])}-{Two(date.Groups[day])}{date.Groups["time"].Value}"), null);
    }

    /// <summary>A date with day and month as numbers, and what may stand behind it: a time such as <c>06:30</c>.</summary>
    [GeneratedRegex(
        @"^(?<first>\d{1,2})(?<sign>[./])(?<second>\d{1,2})\k<sign>(?<year>\d{4})(?<time>[ T]\d{2}:\d{2}(:\d{2})?)?$")]
    internal static partial Regex WrittenDate();

    /// <summary>Groups of three digits with a sign between them.</summary>
    private static Regex Grouped(char thousands) => thousands == '.' ? ByPoints() : ByCommas();

    [GeneratedRegex(@"^[+-]?\d{1,3}(\.\d{3})+(,\d+)?$")]
    private static partial Regex ByPoints();

    [GeneratedRegex(@"^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$")]
    private static partial Regex ByCommas();

    private static string PointWanted(string text) =>
        $"'{text}': write a point, not a comma, as the decimal sign and no thousands sign.";

    private static string NameOf(char sign) => sign == ',' ? "comma" : "point";

    private static string Two(Group number) => number.Value.PadLeft(2, '0');
}
