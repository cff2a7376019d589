namespace WearWatch.Dashboard.Kit.Words;

/// <summary>Counts with their nouns, in the person's language: 1 chain, 3,012 chains.</summary>
public static class Counts
{
    public static string Chains(int n) => T[Phrase.Counted(n, $"{n:#,0} chain", $"{n:#,0} chains")];

    public static string Readings(int n) => T[Phrase.Counted(n, $"{n:#,0} reading", $"{n:#,0} readings")];

    public static string Lubrications(int n) => T[Phrase.Counted(n, $"{n:#,0} lubrication", $"{n:#,0} lubrications")];

    /// <summary>Beyond a few it says only that nobody records them.</summary>
    public static string Missed(int n) => n > 20
        ? T["more than 20 lubrications missed"]
        : T[Phrase.Counted(n, $"{n:#,0} lubrication missed", $"{n:#,0} lubrications missed")];

    public static string Shutdowns(int n) => T[Phrase.Counted(n, $"{n:#,0} shutdown", $"{n:#,0} shutdowns")];

    public static string Months(int n) => T[Phrase.Counted(n, $"{n:#,0} month", $"{n:#,0} months")];
}
