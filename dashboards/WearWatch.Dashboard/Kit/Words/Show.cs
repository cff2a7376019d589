using System.Globalization;
using System.Text.RegularExpressions;
using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>Numbers with their units, as the screens write them.</summary>
public static partial class Show
{
    /// <summary>What stands where nothing is known.</summary>
    public const string Nothing = "–";

    /// <summary>A condition, of chains that lift in their own words.</summary>
    public static string Words(ShownCondition condition) => T[condition.Words];

    /// <summary>An elongation such as 1.83 %.</summary>
    public static string Percent(double? percent) =>
        percent is { } value ? value.ToString("0.00", CultureInfo.CurrentCulture) + " %" : Nothing;

    /// <summary>A probability such as 12 %, with the ends told as what they are.</summary>
    public static string Chance(double probability) => probability switch
    {
        <= 0 => "0 %",
        < 0.01 => T["under 1 %"],
        > 0.99 => T["over 99 %"],
        _ => (100 * probability).ToString("0", CultureInfo.CurrentCulture) + " %",
    };

    /// <summary>A wear rate such as 0.21 % per 1,000 h.</summary>
    public static string Rate(double? percentPer1000Hours) =>
        percentPer1000Hours is { } value ? T[$"{RateFigure(value)} % per 1,000 h"] : Nothing;

    /// <summary>The figure of a wear rate with the digits that matter.</summary>
    public static string RateFigure(double percentPer1000Hours) =>
        percentPer1000Hours.ToString(percentPer1000Hours < 0.1 ? "0.000" : "0.00", CultureInfo.CurrentCulture);

    /// <summary>Running hours such as 12,400 h.</summary>
    public static string Hours(double? hours) =>
        hours is { } value ? value.ToString("#,0", CultureInfo.CurrentCulture) + " h" : Nothing;

    /// <summary>A length in millimetres such as 1,219.4 mm.</summary>
    public static string Millimetres(double lengthMm) => lengthMm.ToString("#,0.0##", CultureInfo.CurrentCulture) + " mm";

    /// <summary>A count such as 3,012.</summary>
    public static string Count(int count) => count.ToString("#,0", CultureInfo.CurrentCulture);

    /// <summary>A count with its noun: 1 chain, 2 chains.</summary>
    public static string Count(int count, string noun) => $"{Count(count)} {noun}{(count == 1 ? "" : "s")}";

    /// <summary>What the domain says, as a sentence in the person's language.</summary>
    public static string Sentence(Phrase phrase) => Sentence(T[phrase]);

    /// <summary>
    /// A text of the domain as a sentence: a capital first, a full stop last, no line broken between a figure and its unit.
    /// </summary>
    public static string Sentence(string text)
    {
        if (text.Length == 0) return text;
        var sentence = char.ToUpperInvariant(text[0]) + text[1..].Replace(" %", "\u00A0%", StringComparison.Ordinal)
            .Replace("± ", "±\u00A0", StringComparison.Ordinal);
        return sentence[^1] is '.' or '?' or '!' ? sentence : sentence + ".";
    }

    /// <summary>Where a figure is from: of the numbered list in the project's docs the number is enough.</summary>
    public static string Source(string source) => T[SourceWords.Of(source, cited =>
        Sourced.InBrief(cited) is var number && number != cited ? Phrase.Of($"source {number}") : Phrase.Verbatim(cited))];

    /// <summary>A text that was kept with decimal points, such as 48.5 mm, with the decimal sign of the language.</summary>
    public static string Written(string text) =>
        DecimalPoint().Replace(text, CultureInfo.CurrentCulture.NumberFormat.NumberDecimalSeparator);

    /// <summary>A number for an attribute of a drawing: two decimals at most, with a point.</summary>
    public static string Coordinate(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<=\d)\.(?=\d)")]
    private static partial Regex DecimalPoint();
}
