using System.Globalization;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;

namespace WearWatch.Benchmarks.Entries;

/// <summary>A slip of a length, its count or its chain that is made on purpose.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Spoil">The entry with the slip; null where it cannot be made here.</param>
/// <param name="Kinds">Its right names.</param>
internal sealed record LengthSlip(
    string Name, Func<ChainCard, Reading, Reading?, Random, Reading?> Spoil, params IReadOnlyList<SlipKind> Kinds)
{
    private const double Inch = 25.4;

    /// <summary>A strand or place that wears so much more or less.</summary>
    private const double OtherWear = 0.4;

    public const string Neighbour = "neighbour";
    public const string Swapped = "digits swapped";
    public const string Missing = "digit missing";
    public const string MoreWorn = "more worn strand";
    public const string LessWorn = "less worn strand";

    /// <summary>The slips of a length.</summary>
    public static IReadOnlyList<LengthSlip> All { get; } =
    [
        new("one pitch", (_, r, _, chance) => r with { Pitches = r.Pitches + OneOf(chance, 1, -1) }, SlipKind.PitchesMiscounted),
        new("two pitches", (_, r, _, chance) => r with { Pitches = r.Pitches + OneOf(chance, 2, -2) },
            SlipKind.PitchesMiscounted),
        new("half the pitches", (_, r, _, _) => r.Pitches % 2 == 0 ? r with { Pitches = r.Pitches / 2 } : null,
            SlipKind.PitchesMiscounted),
        new("inches for mm", (_, r, _, _) => Length(r, r.LengthMm / Inch), SlipKind.WrongUnit),
        new("mm for inches", (_, r, _, _) => Length(r, r.LengthMm * Inch), SlipKind.WrongUnit),
        new("metres for mm", (_, r, _, _) => Length(r, r.LengthMm / 1000), SlipKind.WrongUnit),
        new("decimal point", (_, r, _, chance) => Length(r, chance.Next(2) == 0 ? r.LengthMm * 10 : r.LengthMm / 10),
            SlipKind.DecimalPoint),
        new(Swapped, (_, r, _, chance) => Text(r, t => Swap(t, chance)), SlipKind.DigitsSwapped, SlipKind.DigitMissing),
        new(Missing, (_, r, _, chance) => Text(r, t => Drop(t, chance)), SlipKind.DigitMissing),
        new("tape at 10 mm", (_, r, _, _) => OfTape(r, 10), SlipKind.TapeNotAtZero),
        new("tape at 100 mm", (_, r, _, _) => OfTape(r, 100), SlipKind.TapeNotAtZero),
        new("outside of rollers", (c, r, _, _) => OfRollers(c, r, 1), SlipKind.OutsideOfRollers),
        new("inside of rollers", (c, r, _, _) => OfRollers(c, r, -1), SlipKind.InsideOfRollers),
        new(Neighbour, (c, r, other, _) => other is null ? null : other with
        {
            Chain = r.Chain, TakenAt = r.TakenAt, Counter = r.Counter,
        }, SlipKind.OtherChain),
        new(MoreWorn, (c, r, _, _) => Worn(c, r, 1 + OtherWear), SlipKind.OtherStrand, SlipKind.Misread),
        new(LessWorn, (c, r, _, _) => Worn(c, r, 1 - OtherWear), SlipKind.OtherStrand, SlipKind.Misread),
    ];

    private static int OneOf(Random chance, int one, int other) => chance.Next(2) == 0 ? one : other;

    private static Reading Length(Reading r, double mm) => r with
    {
        LengthMm = mm,
        Written = mm.ToString("0.######", CultureInfo.InvariantCulture),
        Unit = Units.LengthUnit.Millimetre,
    };

    private static Reading? Text(Reading r, Func<string, string?> spoil)
    {
        var text = r.LengthMm.ToString(r.Tool == Tool.Tape ? "0.#" : "0.##", CultureInfo.InvariantCulture);
        return spoil(text) is { } spoiled && double.Parse("0" + spoiled, CultureInfo.InvariantCulture) is > 0 and var mm
            ? Length(r, mm)
            : null;
    }

    /// <summary>Two whole digits beside each other: those behind the point hardly matter.</summary>
    private static string? Swap(string text, Random chance)
    {
        var whole = (text + ".").IndexOf('.', StringComparison.Ordinal);
        int[] places = [.. Enumerable.Range(0, whole - 1).Where(i => text[i] != text[i + 1])];
        if (places.Length == 0) return null;
        var at = places[chance.Next(places.Length)];
        return text[..at] + text[at + 1] + text[at] + text[(at + 2)..];
    }

    private static string Drop(string text, Random chance)
    {
        var whole = (text + ".").IndexOf('.', StringComparison.Ordinal);
        return text.Remove(chance.Next(whole), 1);
    }

    private static Reading? OfTape(Reading r, double markMm) => r.Tool == Tool.Tape ? Length(r, r.LengthMm + markMm) : null;

    private static Reading? OfRollers(ChainCard card, Reading r, int sign) =>
        ChainCatalogue.Find(card.ChainType)?.RollerMm is { } roller ? Length(r, r.LengthMm + sign * roller.Value) : null;

    private static Reading Worn(ChainCard card, Reading r, double factor)
    {
        var nominal = r.Pitches * card.PitchMm;
        return Length(r, nominal + (r.LengthMm - nominal) * factor);
    }
}
