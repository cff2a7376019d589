using System.Globalization;
using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>
/// What is made of a number as a person types it: the one rule of all desk pages. A decimal comma and a decimal point are both
/// read, in every language, as long as only one number can be meant.
/// </summary>
/// <remarks>
/// <c>1.234</c> is two numbers to a person in whose language the point groups thousands: such a text is never read but asked
/// about. <c>1.234,5</c> and <c>1,234.5</c> say by themselves which sign is which.
/// </remarks>
public abstract partial record TypedNumber
{
    private TypedNumber()
    {
    }

    /// <summary>A number that was understood.</summary>
    /// <param name="Value">The number.</param>
    public sealed record Understood(double Value) : TypedNumber;

    /// <summary>A text that is no number, or empty.</summary>
    public sealed record NotANumber : TypedNumber;

    /// <summary>A text that can mean two numbers.</summary>
    /// <param name="Typed">What was typed.</param>
    /// <param name="Small">The number when its sign stands before decimals.</param>
    /// <param name="Large">The number when its sign groups thousands.</param>
    public sealed record TwoWays(string Typed, double Small, double Large) : TypedNumber
    {
        /// <summary>Asks the person for the one that is meant; both stand there as the language writes them.</summary>
        public Phrase Question => $"'{Typed}' can mean {Small:0.000} or {Large:0}: write the one you mean.";
    }

    /// <summary>Reads a text by the language of the request.</summary>
    public static TypedNumber Read(string? text)
    {
        var typed = Spaces().Replace(text ?? "", "");
        var match = Shape().Match(typed);
        if (!match.Success) return new NotANumber();
        var (groups, decimals) = (match.Groups["groups"], match.Groups["decimals"]);
        // The sign of a single group is as well a decimal sign; in the language that groups by it, it is asked about.
        if (groups.Success && !decimals.Success && match.Groups["group"].Captures.Count == 1)
        {
            return match.Groups["sign"].Value == CultureInfo.CurrentCulture.NumberFormat.NumberGroupSeparator
                ? new TwoWays(typed, Invariant(typed.Replace(',', '.')), Invariant(Plain().Replace(typed, "")))
                : new Understood(Invariant(typed.Replace(',', '.')));
        }

        var whole = groups.Success ? Plain().Replace(groups.Value, "") : match.Groups["whole"].Value;
        return new Understood(Invariant(match.Groups["minus"].Value + whole + decimals.Value.Replace(',', '.')));
    }

    /// <summary>The number; null where the text is none, or can mean two.</summary>
    public static double? Of(string? text) => (Read(text) as Understood)?.Value;

    /// <summary>The whole number; null where the text is none, or can mean two.</summary>
    public static int? WholeOf(string? text) =>
        Of(text) is { } number && number == Math.Floor(number) && Math.Abs(number) <= int.MaxValue ? (int)number : null;

    /// <summary>What is wrong with a text: which of two numbers is meant, else what is wanted.</summary>
    public static string Fault(string? text, Phrase wanted) => T[Read(text) is TwoWays two ? two.Question : wanted];

    /// <summary>A number as it stands in a field: with the language's decimal sign, so that it reads back.</summary>
    public static string Text(double? number, string format = "0.######") =>
        number?.ToString(format, CultureInfo.CurrentCulture) ?? "";

    /// <summary>A text of numbers, units and fractions with decimal points; null where a number can mean two.</summary>
    /// <param name="text">Such as <c>1234,5 mm</c> or <c>48 3/16</c>.</param>
    /// <param name="question">Which of two is meant; none where all is plain.</param>
    public static string? WithPoints(string text, out Phrase question)
    {
        var asked = Phrase.None;
        var plain = Number().Replace(text, number =>
        {
            switch (Read(number.Value))
            {
                case Understood understood:
                    return understood.Value.ToString("0.##########", CultureInfo.InvariantCulture);
                case TwoWays two:
                    asked = two.Question;
                    return number.Value;
                default:
                    return number.Value;
            }
        });
        question = asked;
        return asked.IsEmpty ? plain : null;
    }

    private static double Invariant(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    // Groups of three with one sign, then perhaps decimals with the other; or digits with one decimal sign.
    [GeneratedRegex(
        """^(?<minus>[+-]?)(?:(?<groups>[1-9]\d{0,2}(?:(?<sign>[.,])(?<group>\d{3}))(?:\k<sign>(?<group>\d{3}))*)"""
        + """(?<decimals>(?!\k<sign>)[.,]\d+)?|(?<whole>\d+)(?<decimals>[.,]\d*)?|(?<whole>)(?<decimals>[.,]\d+))$""")]
    private static partial Regex Shape();

    [GeneratedRegex("[.,]")]
    private static partial Regex Plain();

    [GeneratedRegex(@"^\s+|\s+$|(?<=\d)[ \u00A0\u202F](?=\d{3}(?!\d))")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"\d[\d.,]*\d|\d")]
    private static partial Regex Number();
}
