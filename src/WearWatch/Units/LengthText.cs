using System.Globalization;
using System.Text.RegularExpressions;
using WearWatch.Phrases;

namespace WearWatch.Units;

/// <summary>What was made of a length as a person wrote it.</summary>
public abstract partial record LengthText
{
    /// <summary>The finest graduation of an inch rule: 1/64.</summary>
    private const int FinestDenominator = 64;

    private LengthText()
    {
    }

    /// <summary>A length that was understood.</summary>
    /// <param name="Length">The length.</param>
    /// <param name="WrittenIn">
    /// The unit it was written in: by its own mark; inches when it has a fraction; else the one that was expected.
    /// </param>
    public sealed record Understood(Length Length, LengthUnit WrittenIn) : LengthText;

    /// <summary>Text that is no length.</summary>
    /// <param name="Reason">What is wrong with it and what would do.</param>
    public sealed record NotUnderstood(Phrase Reason) : LengthText;

    /// <summary>
    /// Reads <c>609.6</c>, <c>609.6 mm</c>, <c>24.75 in</c>, <c>48 3/16</c>, <c>48-3/16"</c>, <c>3/4"</c> or <c>1.219 m</c>.
    /// </summary>
    /// <remarks>
    /// A decimal comma is taken for a point unless it could be a separator of thousands. Decimal arithmetic keeps the text exact
    /// up to the last step, so that <c>48 3/16</c> is the double nearest to 1223.9625 mm.
    /// </remarks>
    /// <param name="text">What was written.</param>
    /// <param name="expected">The unit of a plain number.</param>
    public static LengthText Read(string? text, LengthUnit expected)
    {
        if (string.IsNullOrWhiteSpace(text)) return new NotUnderstood($"A length is wanted, such as 609.6 or 24 3/16\".");
        var match = Shape().Match(text);
        if (!match.Success)
            return new NotUnderstood(
                $"'{text.Trim()}' is not a length. Write a number (609.6), a number with mm, cm, m or in, "
                + $"or inches with a fraction (48 3/16).");

        var number = match.Groups["number"].Value;
        if (ThousandsOrDecimals().IsMatch(number))
            return new NotUnderstood($"'{number}' can be read in two ways. Write a decimal point, and no mark for thousands.");
        var mark = match.Groups["unit"].Value.ToLowerInvariant();
        var hasFraction = match.Groups["over"].Success;
        if (hasFraction && mark is "mm" or "cm" or "m")
            return new NotUnderstood($"'{text.Trim()}': fractions are for inches; write {mark} with a decimal point.");
        if (hasFraction && number.AsSpan().IndexOfAny('.', ',') >= 0)
            return new NotUnderstood($"'{text.Trim()}' has a decimal point and a fraction; use one of them.");

        var digits = number.Length == 0 ? "0" : number.Replace(',', '.');
        if (!decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
            return new NotUnderstood($"'{number}' has more digits than a length can have.");
        if (hasFraction)
        {
            var top = int.Parse(match.Groups["top"].ValueSpan, CultureInfo.InvariantCulture);
            var over = int.Parse(match.Groups["over"].ValueSpan, CultureInfo.InvariantCulture);
            if (over < 2 || over > FinestDenominator || (over & (over - 1)) != 0)
                return new NotUnderstood(
                    $"{top}/{over} is on no inch rule: it has halves, quarters, eighths, 16ths, 32nds and 64ths.");
            if (top >= over)
                return new NotUnderstood($"{top}/{over} is not a fraction of an inch: the upper number must be the smaller one.");
            value += (decimal)top / over;
        }

        return InMillimetres(value, mark, hasFraction, expected);
    }

    /// <summary>A length as it was written, with its unit where it bears none: <c>48 3/16 in</c>, <c>1.219 m</c>.</summary>
    public static string WithUnit(string written, LengthUnit unit) =>
        written.Length == 0 || Mark().IsMatch(written) ? written : $"{written} {(unit == LengthUnit.Inch ? "in" : "mm")}";

    private static LengthText InMillimetres(decimal value, string mark, bool hasFraction, LengthUnit expected)
    {
        var unit = mark switch
        {
            "mm" or "cm" or "m" => LengthUnit.Millimetre,
            "" when !hasFraction => expected,
            _ => LengthUnit.Inch,
        };
        var factor = mark switch { "cm" => 10m, "m" => 1000m, _ => unit == LengthUnit.Inch ? 25.4m : 1m };
        if (value > 1_000_000m) return new NotUnderstood($"No chain is so long; is the unit right?");
        return value == 0
            ? new NotUnderstood($"A length above zero is wanted.")
            : new Understood(new Length((double)(value * factor)), unit);
    }

    [GeneratedRegex(
        """^\s*(?:(?<number>\d+(?:[.,]\d+)?|[.,]\d+)?"""
        + """(?:(?:(?<=\d)(?:\s+|\s*-\s*)|(?<![\d.,]))(?<top>\d{1,3})\s*/\s*(?<over>\d{1,3}))?)"""
        + """\s*(?<unit>mm|cm|m|inches|inch|in\.?|"|''|”|″)?\s*$""", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();

    [GeneratedRegex("""(?:\b|\d)(?:mm|cm|m|inches|inch|in\.?)$|["”″]$|''$""", RegexOptions.IgnoreCase)]
    private static partial Regex Mark();

    [GeneratedRegex("""^[1-9]\d{0,2},\d{3}$""")]
    private static partial Regex ThousandsOrDecimals();
}
