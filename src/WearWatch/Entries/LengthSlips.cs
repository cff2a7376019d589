using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Entries;

/// <summary>
/// Slips of the length's digits, of the tape's beginning and of the whole count. Their shares are guesses of a plant's practice:
/// common practice, no source.
/// </summary>
internal static class LengthSlips
{
    private const double UsualCount = 0.003;
    private const double MillimetresPerInch = Length.MillimetresPerInch;
    private const double WrittenWithinMm = 0.02;
    private const int FewestDigits = 2;
    private const double HalfTheCount = 0.001;
    private const double Metres = 0.001;
    private const double DigitsSwapped = 0.003;
    private const double DigitMissing = 0.002;
    private const double NotAtZero = 0.001;

    /// <summary>Lengths so near to each other come to the same: 0.1 % of elongation, a tape's doubt.</summary>
    private const double SameLengthShare = 0.001;

    /// <summary>A tape whose hook is worn is begun at one of these marks, in millimetres.</summary>
    private static readonly double[] Marks = [10, 100];

    public static IEnumerable<Account?> For(ChainCard card, Reading entry, Expectation expected, int? usualPitches)
    {
        Account? Try(SlipKind kind, Phrase words, double share, int pitches, double lengthMm) =>
            Account.Of(kind, words, share, card, entry, pitches, lengthMm, expected);

        // One and two pitches off are tried anyway.
        if (usualPitches is { } usual && Math.Abs(usual - entry.Pitches) > 2)
        {
            yield return Try(
                SlipKind.PitchesMiscounted, $"over {usual} pitches as usual", UsualCount, usual, entry.LengthMm);
        }

        if (entry.Pitches > 2)
        {
            yield return Try(SlipKind.PitchesMiscounted, $"over {2 * entry.Pitches} pitches, every second one counted",
                HalfTheCount, 2 * entry.Pitches, entry.LengthMm);
        }

        yield return Try(SlipKind.WrongUnit, $"in metres", Metres, entry.Pitches, entry.LengthMm * 1000);
        if (entry.Tool == Tool.Tape)
        {
            foreach (var mark in Marks)
            {
                yield return Try(SlipKind.TapeNotAtZero, $"measured from the {mark:0} mm mark of the tape", NotAtZero,
                    entry.Pitches, entry.LengthMm - mark);
            }
        }

        var meant = Written(entry).ToList();
        foreach (var swapped in Told(DigitSlip.Swapped, SlipKind.DigitsSwapped, $"two digits swapped", DigitsSwapped))
            yield return swapped;
        foreach (var missing in Told(DigitSlip.Missing, SlipKind.DigitMissing, $"a digit left out", DigitMissing))
            yield return missing;

        // Of the many that may have been meant those that come to the same are one account: the one that fits best, with the
        // odds of them all.
        IEnumerable<Account> Told(DigitSlip how, SlipKind kind, Phrase words, double share)
        {
            var kept = new List<Account>();
            foreach (var account in meant.Where(m => m.Number.How == how).Select(m => Try(
                kind, $"{m.Text}, {words}", share * m.Number.Chance, entry.Pitches, m.Mm)).OfType<Account>()
                .OrderByDescending(a => a.LogWeight))
            {
                var same = kept.FindIndex(k => Math.Abs(k.LengthMm / account.LengthMm - 1) < SameLengthShare);
                if (same < 0) kept.Add(account);
                else kept[same] = kept[same] with { LogWeight = Sum(kept[same].LogWeight, account.LogWeight) };
            }

            return kept;
        }
    }

    private static double Sum(double more, double less) => more + Math.Log(1 + Math.Exp(less - more));

    /// <summary>The lengths that may have been meant by the figures as written; none where they are of several.</summary>
    private static IEnumerable<(MeantNumber Number, double Mm, Phrase Text)> Written(Reading entry)
    {
        var unit = entry.Unit == LengthUnit.Inch ? MillimetresPerInch : 1;
        var (whole, rest) = entry.Written.Trim().Split(' ') is [var first, var second] && second.Contains('/')
            ? (first, (double?)null) : (entry.Written.Trim(), 0);
        var number = whole.Length == 0 && entry.Tool == Tool.Tape ? Math.Round(entry.LengthMm / unit, 2)
            : double.TryParse(whole, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var told) ? told
            : 0;
        // The sixteenths behind whole inches stay as they are.
        var over = rest ?? entry.LengthMm / unit - number;
        if (number <= 0 || Math.Abs((number + over) * unit - entry.LengthMm) > WrittenWithinMm) yield break;
        foreach (var meant in Digits.Meant(number, FewestDigits))
        {
            var mm = (meant.Value + over) * unit;
            yield return (meant, mm, unit == 1 ? Phrase.Of($"{mm:0.##} mm") : $"{meant.Value + over:0.####} in");
        }
    }
}
