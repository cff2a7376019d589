namespace WearWatch.Entries;

/// <summary>What the kinds of slips have in common.</summary>
public static class SlipKinds
{
    /// <summary>Whether the slip lies in the hour counter or the date, not in the length.</summary>
    public static bool IsOfCounter(this SlipKind kind) => kind.SaysTheCounter()
        || kind is SlipKind.CounterReset or SlipKind.CounterOfOtherChain or SlipKind.DateSlipped or SlipKind.CounterWrong;

    /// <summary>Whether the slip says what the counter showed.</summary>
    public static bool SaysTheCounter(this SlipKind kind) => kind is SlipKind.CounterDigitsSwapped or SlipKind.CounterDigitMissing
        or SlipKind.CounterDigitExtra or SlipKind.CounterDigitWrong or SlipKind.CounterTenfold;

    /// <summary>Whether something is to be recorded first, and the entry is right after that.</summary>
    public static bool IsWithoutRecord(this SlipKind kind) =>
        kind is SlipKind.ReplacedWithoutRecord or SlipKind.ShortenedWithoutRecord or SlipKind.CounterReset;

    /// <summary>Whether nothing is offered: it is to be read again.</summary>
    public static bool MeansReadAgain(this SlipKind kind) =>
        kind is SlipKind.Misread or SlipKind.OtherStrand or SlipKind.CounterWrong or SlipKind.CounterOfOtherChain;
}
