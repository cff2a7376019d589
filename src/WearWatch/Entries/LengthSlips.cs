using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;

namespace WearWatch.Entries;

/// <summary>
/// Slips of the length's digits, of the tape's beginning and of the whole count. Their shares are guesses of a plant's practice:
/// common practice, no source.
/// </summary>
internal static class LengthSlips
{
    private const double UsualCount = 0.003;
    private const double HalfTheCount = 0.001;
    private const double Metres = 0.001;
    private const double DigitsSwapped = 0.002;
    private const double DigitMissing = 0.001;
    private const double NotAtZero = 0.0005;

    /// <summary>A tape whose hook is worn is begun at one of these marks, in millimetres.</summary>
    private static readonly double[] Marks = [10, 100];

    public static IEnumerable<Account?> For(ChainCard card, Reading entry, Expectation expected, int? usualPitches)
    {
        Account? Try(SlipKind kind, string words, double share, int pitches, double lengthMm) =>
            Account.Of(kind, words, share, card, entry, pitches, lengthMm, expected);

        // One and two pitches off are tried anyway.
        if (usualPitches is { } usual && Math.Abs(usual - entry.Pitches) > 2)
        {
            yield return Try(
                SlipKind.PitchesMiscounted, Text($"over {usual} pitches as usual"), UsualCount, usual, entry.LengthMm);
        }

        if (entry.Pitches > 2)
        {
            yield return Try(SlipKind.PitchesMiscounted, Text($"over {2 * entry.Pitches} pitches, every second one counted"),
                HalfTheCount, 2 * entry.Pitches, entry.LengthMm);
        }

        yield return Try(SlipKind.WrongUnit, "in metres", Metres, entry.Pitches, entry.LengthMm * 1000);
        if (entry.Tool == Tool.Tape)
        {
            foreach (var mark in Marks)
            {
                yield return Try(SlipKind.TapeNotAtZero, Text($"measured from the {mark:0} mm mark of the tape"), NotAtZero,
                    entry.Pitches, entry.LengthMm - mark);
            }
        }

        if (WrittenMm(entry) is not { } written) yield break;
        var meant = Digits.Meant(written).ToList();
        yield return Best(DigitSlip.Swapped, SlipKind.DigitsSwapped, "two digits swapped", DigitsSwapped);
        yield return Best(DigitSlip.Missing, SlipKind.DigitMissing, "a digit left out", DigitMissing);

        // Of the many that may have been meant the one that fits best is told, with the odds of that one.
        Account? Best(DigitSlip how, SlipKind kind, string words, double share) => meant.Where(m => m.How == how)
            .Select(m => Try(kind, Text($"{m.Value:0.##} mm, {words}"), share * m.Chance, entry.Pitches, m.Value))
            .MaxBy(a => a?.LogWeight ?? double.NegativeInfinity);
    }

    /// <summary>The length as one plain number of millimetres; null where it was written otherwise.</summary>
    private static double? WrittenMm(Reading entry) => entry.Written.Length == 0 && entry.Tool == Tool.Tape
        ? Math.Round(entry.LengthMm, 2)
        : double.TryParse(entry.Written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm)
            && Math.Abs(mm - entry.LengthMm) < 0.005
            ? mm
            : null;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
