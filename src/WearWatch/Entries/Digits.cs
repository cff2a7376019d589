using System.Globalization;

namespace WearWatch.Entries;

/// <summary>How the digits of a number were written wrongly.</summary>
internal enum DigitSlip
{
    /// <summary>Two neighbouring digits changed places.</summary>
    Swapped,

    /// <summary>A digit was left out.</summary>
    Missing,

    /// <summary>A digit was struck that does not belong there.</summary>
    Extra,

    /// <summary>A digit was struck twice.</summary>
    Repeated,

    /// <summary>One digit is another.</summary>
    Wrong,
}

/// <summary>A number that may have been meant by one that was written.</summary>
/// <param name="How">How it was written wrongly.</param>
/// <param name="Value">The number that was meant.</param>
/// <param name="Chance">The chance that just this slip makes of that number the one that was written, given its kind.</param>
internal readonly record struct MeantNumber(DigitSlip How, double Value, double Chance);

/// <summary>Finds the numbers that may have been meant, when one digit or two neighbours were written wrongly.</summary>
internal static class Digits
{
    private const string All = "0123456789";

    /// <summary>A number shorter than this says too little: anything could have been meant.</summary>
    private const int FewestDigits = 3;

    /// <summary>The numbers that may have been meant, each once a kind.</summary>
    /// <param name="written">The number as written, above zero.</param>
    /// <param name="fewest">A number of fewer digits says too little.</param>
    public static IEnumerable<MeantNumber> Meant(double written, int fewest = FewestDigits)
    {
        var text = written.ToString("0.####", CultureInfo.InvariantCulture);
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : text.Length - point - 1;
        var digits = text.Replace(".", "", StringComparison.Ordinal);
        if (digits.Length < fewest) yield break;

        var whole = digits.Length - decimals;
        foreach (var group in Swapped(digits).Concat(Missing(digits, whole)).Concat(Extra(digits, whole)).Concat(Wrong(digits))
            .Where(m => m.Digits[0] != '0' && m.Digits != digits).GroupBy(m => (m.How, m.Digits)))
            yield return new(group.Key.How, Number(group.Key.Digits, decimals), Math.Min(1, group.Sum(m => m.Chance)));
    }

    private static IEnumerable<(DigitSlip How, string Digits, double Chance)> Swapped(string digits) =>
        Enumerable.Range(0, digits.Length - 1).Where(i => digits[i] != digits[i + 1]).Select(i => (
            DigitSlip.Swapped, digits[..i] + digits[i + 1] + digits[i] + digits[(i + 2)..], 1.0 / (digits.Length - 1)));

    private static IEnumerable<(DigitSlip How, string Digits, double Chance)> Missing(string digits, int whole) =>
        from i in Enumerable.Range(0, whole + 1)
        from digit in All
        select (DigitSlip.Missing, digits[..i] + digit + digits[i..], 1.0 / (digits.Length + 1));

    private static IEnumerable<(DigitSlip How, string Digits, double Chance)> Extra(string digits, int whole)
    {
        for (var i = 0; i < whole && whole > 1; i++)
        {
            var twice = i > 0 && digits[i] == digits[i - 1];
            yield return (twice ? DigitSlip.Repeated : DigitSlip.Extra, digits.Remove(i, 1),
                twice ? 1.0 / (digits.Length - 1) : 1.0 / (digits.Length * All.Length));
        }
    }

    private static IEnumerable<(DigitSlip How, string Digits, double Chance)> Wrong(string digits) =>
        from i in Enumerable.Range(0, digits.Length)
        from digit in All
        where digit != digits[i]
        select (DigitSlip.Wrong, digits[..i] + digit + digits[(i + 1)..], 1.0 / (digits.Length * (All.Length - 1)));

    private static double Number(string digits, int decimals) =>
        double.Parse(digits, CultureInfo.InvariantCulture) / Math.Pow(10, decimals);
}
