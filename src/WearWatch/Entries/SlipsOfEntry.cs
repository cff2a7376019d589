using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>
/// The slips that are tried on an entry. Their shares are guesses of a plant's practice: common practice, no source.
/// </summary>
internal static class SlipsOfEntry
{
    private const double OnePitch = 0.003;
    private const double TwoPitches = 0.001;
    private const double Unit = 0.002;
    private const double Decimal = 0.002;
    private const double AtRollers = 0.001;
    private const double OtherChain = 0.005;
    private const double OtherStrand = 0.003;
    private const double Replaced = 0.003;
    private const double Shortened = 0.002;
    private const double Misread = 0.02;
    private const double Nonsense = 0.002;

    /// <summary>High, since it is tried only where the counter lies far behind the calendar.</summary>
    private const double Reset = 0.02;

    /// <summary>How far a length that was misread lies off, in percent.</summary>
    private const double MisreadPercent = 0.8;

    /// <summary>A figure that is wrong altogether lies anywhere within a factor of e^3 either way.</summary>
    private const double NonsensePercent = 600;

    public static IEnumerable<Account> For(ChainCard card, Reading entry, Expectation expected, Alternatives alternatives) =>
        AtTheTape(card, entry, expected)
            .Concat(LengthSlips.For(card, entry, expected, alternatives.UsualPitches))
            .Concat(WithoutRecord(card, entry, expected, alternatives))
            .Concat(alternatives.OtherStrands.Select(other => Account.Of(
                SlipKind.OtherStrand, other.Words, OtherStrand / alternatives.OtherStrands.Count, card, entry, entry.Pitches,
                entry.LengthMm, other.Expected)))
            .Concat(alternatives.OtherChains.Select(other => Account.Of(
                SlipKind.OtherChain, $"a reading of {other.Card.Name}",
                OtherChain * other.CountFactor * other.Weight / alternatives.OtherChains.Sum(o => o.Weight), other.Card, entry,
                entry.Pitches, entry.LengthMm, other.Expected)))
            .OfType<Account>()
            .Append(Anything(card, entry, expected));

    private static IEnumerable<Account?> AtTheTape(ChainCard card, Reading entry, Expectation expected)
    {
        Account? Try(SlipKind kind, Phrase words, double share, int pitches, double lengthMm, double spread = 0) =>
            Account.Of(kind, words, share, card, entry, pitches, lengthMm, expected, spread);

        foreach (var by in (int[])[1, -1, 2, -2])
        {
            var pitches = entry.Pitches + by;
            yield return Try(SlipKind.PitchesMiscounted,
                $"over {pitches} pitches instead of {entry.Pitches}",
                Math.Abs(by) == 1 ? OnePitch : TwoPitches, pitches, entry.LengthMm);
        }

        yield return Try(SlipKind.WrongUnit, $"in inches", Unit, entry.Pitches, entry.LengthMm * Units.Length.MillimetresPerInch);
        yield return Try(SlipKind.WrongUnit, $"in millimetres", Unit, entry.Pitches,
            entry.LengthMm / Units.Length.MillimetresPerInch);
        yield return Try(SlipKind.DecimalPoint, $"ten times as much", Decimal, entry.Pitches, entry.LengthMm * 10);
        yield return Try(SlipKind.DecimalPoint, $"a tenth of it", Decimal, entry.Pitches, entry.LengthMm / 10);
        if (ChainCatalogue.Find(card.ChainType)?.RollerMm is { } roller)
        {
            yield return Try(SlipKind.OutsideOfRollers, $"over the outside of the rollers", AtRollers, entry.Pitches,
                entry.LengthMm - roller.Value);
            yield return Try(SlipKind.InsideOfRollers, $"between the inside of the rollers", AtRollers, entry.Pitches,
                entry.LengthMm + roller.Value);
        }

        yield return Try(SlipKind.Misread, $"misread", Misread, entry.Pitches, entry.LengthMm, MisreadPercent);
    }

    private static IEnumerable<Account?> WithoutRecord(ChainCard card, Reading entry, Expectation expected,
        Alternatives alternatives)
    {
        yield return Account.Of(
            SlipKind.ReplacedWithoutRecord, $"a new chain that nobody recorded", Replaced, card, entry, entry.Pitches,
                entry.LengthMm, alternatives.IfReplaced);
        if (entry.Pitches == card.Pitches && card.MayBeShortened)
        {
            yield return Account.Of(
                SlipKind.ShortenedWithoutRecord, $"the whole loop, shortened by two pitches without record", Shortened, card,
                entry, entry.Pitches - 2, entry.LengthMm, expected);
        }

        if (alternatives.IfCounterWasReset is { } afterReset)
        {
            yield return Account.Of(
                SlipKind.CounterReset, $"after the hour counter was set back without record", Reset, card, entry, entry.Pitches,
                entry.LengthMm, afterReset);
        }
    }

    /// <summary>
    /// A figure that is wrong in no known way: as likely anywhere, so that it wins only where nothing else comes near.
    /// </summary>
    private static Account Anything(ChainCard card, Reading entry, Expectation expected) =>
        Account.Honest(card, entry, expected) with
        {
            Kind = SlipKind.Misread,
            Words = $"a figure that is wrong altogether",
            LogWeight = Math.Log(Nonsense) + 0.5 * Math.Log(2 * Math.PI) - Math.Log(NonsensePercent),
        };
}
