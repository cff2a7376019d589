using System.Globalization;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>Numbers with their units, as the screens write them.</summary>
public static class Show
{
    /// <summary>What stands where nothing is known.</summary>
    public const string Nothing = "–";

    /// <summary>An elongation such as 1.83 %.</summary>
    public static string Percent(double? percent) =>
        percent is { } value ? value.ToString("0.00", CultureInfo.InvariantCulture) + " %" : Nothing;

    /// <summary>A probability such as 12 %, with the ends told as what they are.</summary>
    public static string Chance(double probability) => probability switch
    {
        <= 0 => "0 %",
        < 0.01 => "under 1 %",
        > 0.99 => "over 99 %",
        _ => (100 * probability).ToString("0", CultureInfo.InvariantCulture) + " %",
    };

    /// <summary>A wear rate such as 0.21 % per 1,000 h.</summary>
    public static string Rate(double? percentPer1000Hours) =>
        percentPer1000Hours is { } value ? RateFigure(value) + " % per 1,000 h" : Nothing;

    /// <summary>The figure of a wear rate with the digits that matter.</summary>
    public static string RateFigure(double percentPer1000Hours) =>
        percentPer1000Hours.ToString(percentPer1000Hours < 0.1 ? "0.000" : "0.00", CultureInfo.InvariantCulture);

    /// <summary>Running hours such as 12,400 h.</summary>
    public static string Hours(double? hours) =>
        hours is { } value ? value.ToString("#,0", CultureInfo.InvariantCulture) + " h" : Nothing;

    /// <summary>A length in millimetres such as 1,219.4 mm.</summary>
    public static string Millimetres(double lengthMm) => lengthMm.ToString("#,0.0##", CultureInfo.InvariantCulture) + " mm";

    /// <summary>A count such as 3,012.</summary>
    public static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>A count with its noun: 1 chain, 2 chains.</summary>
    public static string Count(int count, string noun) => $"{Count(count)} {noun}{(count == 1 ? "" : "s")}";

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

    /// <summary>A number for an attribute of a drawing: two decimals at most, with a point.</summary>
    public static string Coordinate(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
