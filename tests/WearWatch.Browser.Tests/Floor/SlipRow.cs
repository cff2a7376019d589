using WearWatch.Entries;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What is typed at a chain of <see cref="SlipPlant"/>, and what is asked about it.</summary>
/// <param name="Kind">The slip.</param>
/// <param name="Counter">The hour counter.</param>
/// <param name="Pitches">The pitches.</param>
/// <param name="Length">The length.</param>
/// <param name="Asked">A part of what is asked.</param>
/// <param name="Becomes">
/// What the counter, the pitches or the length is once that is said yes to; empty for no such answer.
/// </param>
internal sealed record SlipRow(
    SlipKind Kind, string Counter, string Pitches, string Length, string Asked, string Becomes = "")
{
    /// <summary>At which chain of the plant.</summary>
    public int Chain { get; init; } = 1;

    /// <summary>The place on the chain; empty where none is told.</summary>
    public string Place { get; init; } = "";

    /// <summary>Days before now that are told as the day; null for none.</summary>
    public int? DaysAgo { get; init; }

    /// <summary>Each kind at least once.</summary>
    public static IReadOnlyList<SlipRow> All { get; } =
    [
        new(SlipKind.DigitsSwapped, "5130", "48", "1243.5", "1234.5 mm, two digits swapped", "1234.5"),
        new(SlipKind.DigitMissing, "5130", "48", "124.5", "a digit left out", "1234.5"),
        new(SlipKind.DecimalPoint, "5130", "48", "12345", "A tenth of it", "1234.5"),
        new(SlipKind.WrongUnit, "5130", "48", "48.602", "In inches"),
        new(SlipKind.WrongUnit, "5130", "48", "1.2345", "In metres", "1234.5"),
        new(SlipKind.TapeNotAtZero, "5130", "48", "1244.5", "the 10 mm mark of the tape", "1234.5"),
        new(SlipKind.TapeNotAtZero, "5130", "48", "1334.5", "the 100 mm mark of the tape", "1234.5"),
        new(SlipKind.PitchesMiscounted, "5130", "47", "1234.5", "48 pitches instead of 47", "48"),
        new(SlipKind.PitchesMiscounted, "5130", "24", "1234.5", "48 pitches", "48"),
        // 16B-1 has rollers of 15.88 mm.
        new(SlipKind.OutsideOfRollers, "5130", "48", "1250.5", "Over the outside of the rollers"),
        new(SlipKind.InsideOfRollers, "5130", "48", "1218.6", "Between the inside of the rollers"),
        new(SlipKind.ReplacedWithoutRecord, "5130", "48", "1220", "A new chain that nobody recorded"),
        new(SlipKind.Misread, "5130", "48", "1240.5", "Misread"),
        new(SlipKind.OtherChain, "5130", "60", "1560.5", "A reading of "),
        new(SlipKind.CounterReset, "300", "48", "1234.5", "After the hour counter was set back without record"),
        new(SlipKind.CounterDigitsSwapped, "1530", "48", "1234.5", "5,130 h, two digits swapped", "5130"),
        new(SlipKind.CounterDigitMissing, "513", "48", "1234.5", "a digit left out"),
        new(SlipKind.CounterDigitExtra, "55130", "48", "1234.5", "a digit struck twice", "5130"),
        new(SlipKind.CounterDigitWrong, "8130", "48", "1234.5", "5,130 h, one digit wrong", "5130"),
        new(SlipKind.CounterTenfold, "51303", "48", "1234.5", "its tenths read as hours", "5130.3"),
        new(SlipKind.CounterOfOtherChain, "13000", "48", "1234.5", "The counter of "),
        new(SlipKind.CounterWrong, "777777", "48", "1234.5", "A counter that is wrong altogether"),
        new(SlipKind.DateSlipped, "5130", "48", "1234.5", "its date slipped") { DaysAgo = 32 },
        new(SlipKind.ShortenedWithoutRecord, "5130", "48", "1183", "shortened by two pitches without record") { Chain = 3 },
        new(SlipKind.OtherStrand, "5130", "48", "1228.5", "Place B instead of the one entered") { Chain = 4, Place = "A" },
    ];
}
