using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>
/// The slips that are tried on an hour counter. Their shares are guesses of a plant's practice: common practice, no source.
/// </summary>
internal static class CounterSlips
{
    /// <summary>A counter that is wrong in no known way may show anything: even over ln from 1 to 10,000,000 h.</summary>
    private static readonly double LogRange = Math.Log(1e7);

    public static IReadOnlyList<CounterSlip> All { get; } =
    [
        new(SlipKind.CounterDigitsSwapped, 0.003, c => ByDigits(c, DigitSlip.Swapped, $"two digits swapped")),
        new(SlipKind.CounterDigitMissing, 0.003, c => ByDigits(c, DigitSlip.Missing, $"a digit left out")),
        new(SlipKind.CounterDigitExtra, 0.002, c => ByDigits(c, DigitSlip.Extra, $"a digit too many")),
        new(SlipKind.CounterDigitExtra, 0.002, c => ByDigits(c, DigitSlip.Repeated, $"a digit struck twice")),
        new(SlipKind.CounterDigitWrong, 0.002, c => ByDigits(c, DigitSlip.Wrong, $"one digit wrong")),
        new(SlipKind.CounterTenfold, 0.003, c => [Factor(c, 0.1, $"its tenths read as hours")]),
        new(SlipKind.CounterTenfold, 0.001, c => [Factor(c, 10, $"its last digit read as tenths")]),
        new(SlipKind.CounterOfOtherChain, 0.003, OfOtherChains),
        new(SlipKind.DateSlipped, 0.003, OfOtherDays),
        new(SlipKind.CounterReset, 0.005, SetBack),
        new(SlipKind.CounterReset, 0.001, c => [new(c.AsExpected, $"after the hour counter was changed without record", Any(c))]),
        new(SlipKind.CounterWrong, 0.001, c => [new(c.AsExpected, $"a counter that is wrong altogether", Any(c))]),
    ];

    private static IEnumerable<MeantEntry> ByDigits(CounterCase told, DigitSlip how, Phrase words) =>
        Digits.Meant(told.ToldH).Where(m => m.How == how && CanBe(told, m.Value))
            .Select(m => Meant(told, told.With(m.Value), words, m.Chance));

    private static MeantEntry Factor(CounterCase told, double factor, Phrase words) =>
        Meant(told, told.With(Math.Round(told.ToldH * factor, 2)), words, 1);

    private static MeantEntry Meant(CounterCase told, Reading entry, Phrase words, double chance) => new(
        entry, $"{entry.Counter!.Value.Hours:#,0.#} h, {words}",
        Math.Log(chance) + (told.Clock.LogDensity(entry) ?? double.NegativeInfinity));

    /// <summary>Only the numbers near to what was expected are worth being weighed: there are a hundred others.</summary>
    private static bool CanBe(CounterCase told, double counterH) =>
        counterH >= (told.Clock.MayBeBefore ? 0 : told.Expected.LastH - 1)
        && counterH <= (told.Expected.MostH ?? told.Expected.LastH + 30 * (told.Expected.AboutH - told.Expected.LastH));

    /// <summary>The counter of a neighbour was read: what this chain's own showed nobody knows.</summary>
    private static IEnumerable<MeantEntry> OfOtherChains(CounterCase told) =>
        from other in told.Others
        let density = other.LogDensity(told.Entry with { Chain = other.Chain })
        where density is not null
        select new MeantEntry(told.AsExpected, $"the counter of {other.Chain}", density.Value - Math.Log(told.Others.Count));

    private static IEnumerable<MeantEntry> OfOtherDays(CounterCase told) => told.Entry.TakenAt is not { } at ? [] :
        from day in OtherDays(at).Distinct()
        select new MeantEntry(told.Entry with { TakenAt = day },
            $"read on {day:yyyy-MM-dd}, its date slipped",
            (told.Clock.LogDensity(told.Entry with { TakenAt = day }) ?? double.NegativeInfinity) - Math.Log(OtherDayCount));

    private const int OtherDayCount = 7;

    private static IEnumerable<DateTimeOffset> OtherDays(DateTimeOffset at)
    {
        foreach (var by in (int[])[1, -1])
        {
            yield return at.AddYears(by);
            yield return at.AddMonths(by);
            yield return at.AddDays(by);
        }

        if (at.Day <= 12 && at.Day != at.Month)
            yield return new DateTimeOffset(at.Year, at.Day, at.Month, at.Hour, at.Minute, at.Second, at.Offset);
    }

    /// <summary>Set back to nothing at any moment since the last reading: it shows no more than the hours since.</summary>
    private static IEnumerable<MeantEntry> SetBack(CounterCase told)
    {
        var since = (told.Expected.MostH ?? 2 * told.Expected.AboutH - told.Expected.LastH) - told.Expected.LastH;
        if (told.ToldH < told.Expected.LastH && told.ToldH <= since)
            yield return new(told.AsExpected, $"after the hour counter was set back without record", -Math.Log(since));
    }

    private static double Any(CounterCase told) => -Math.Log(LogRange) - Math.Log(Math.Max(1, told.ToldH));
}
