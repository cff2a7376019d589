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
    public Phrase Words => this == Ours ? Phrase.None : $"Read with {Phrase.Join(", ", Parts())}.";

    /// <summary>Opens a file so written as UTF-8.</summary>
    public Stream Open(ImportFile file) => Letters.CodePage == Encoding.UTF8.CodePage
        ? file.Open()
        : Encoding.CreateTranscodingStream(file.Open(), Letters, Encoding.UTF8);

    /// <summary>A number as our own files have it, or why it cannot be told; a text that is no number stays as it is.</summary>
    public (string Text, Phrase? Fault) Figure(string text)
    {
        if (Separator == ',' && DecimalSign == '.')
            return (text, text.Contains(',', StringComparison.Ordinal) ? PointWanted(text) : null);
        if (!text.AsSpan().ContainsAny('.', ',')) return (text, null);
        if (DecimalSign is not { } sign)
            return (text, $"'{text}': whether its sign is the decimal sign is not clear from this file. Write all digits.");
        var thousands = sign == ',' ? '.' : ',';
        if (!text.Contains(thousands, StringComparison.Ordinal)) return (text.Replace(sign, '.'), null);
        if (Grouped(thousands).IsMatch(text))
            return (text.Replace(thousands.ToString(), "", StringComparison.Ordinal).Replace(sign, '.'), null);
        return (text, $"'{text}' has a {NameOf(thousands)}, but the decimal sign of this file is the {NameOf(sign)}.");
    }

    /// <summary>A moment as our own files have it, or why it cannot be told; one by ISO 8601 stays as it is.</summary>
    public (string Text, Phrase? Fault) Moment(string text)
    {
        if (WrittenDate().Match(text) is not { Success: true } date) return (text, null);
        var order = Dates ?? (date.Groups["sign"].Value == "." ? DateOrder.DayFirst : null);
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

    private static Phrase PointWanted(string text) =>
        $"'{text}': write a point, not a comma, as the decimal sign and no thousands sign.";

    private static Phrase NameOf(char sign) => sign == ',' ? Phrase.Of($"comma") : $"decimal point";

    private IEnumerable<Phrase> Parts()
    {
        if (Separator == ';') yield return $"semicolons between the columns";
        if (Separator == '\t') yield return $"tabs between the columns";
        if (DecimalSign == ',') yield return $"the comma as decimal sign";
        if (DecimalSign is null) yield return $"an unclear decimal sign";
        if (Dates == DateOrder.DayFirst) yield return $"the day before the month";
        if (Dates == DateOrder.MonthFirst) yield return $"the month before the day";
        if (Letters.CodePage != Encoding.UTF8.CodePage) yield return $"{Letters.EncodingName} letters";
    }

    private static string Two(Group number) => number.Value.PadLeft(2, '0');
}
