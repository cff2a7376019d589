using System.Globalization;

namespace WearWatch.Chains;

/// <summary>The chain types that WearWatch knows, found by the names that people use.</summary>
public static class ChainCatalogue
{
    /// <summary>More strands are not made on common pins.</summary>
    private const int MostStrands = 12;

    private static readonly string[] Prefixes =
    [
        "ISO606", "ISO1275", "ISO1977", "ISO4347", "ISO4348", "DIN8153", "DIN8187", "DIN8188", "DIN8165", "DIN22252", "DIN764",
        "DIN766", "EN818-7", "ANSI", "ASME", "NO.", "#",
    ];

    private static readonly Dictionary<string, ChainTypeText> ByName = ChainTypeText.ReadAll()
        .SelectMany(row => row.Names.Select(name => (name: Normal(name), row)))
        .ToDictionary(pair => pair.name, pair => pair.row, StringComparer.Ordinal);

    /// <summary>
    /// Every type: strands as far as strengths are listed, conveyor chains with their pitch still to be chosen.
    /// </summary>
    public static IReadOnlyList<ChainType> All { get; } =
        [.. ByName.Values.Distinct().SelectMany(row => Enumerable.Range(1, row.ListedStrands).Select(row.WithStrands))];

    /// <summary>
    /// The type of a designation: <c>16B-2</c>, <c>80</c>, <c>C2060</c>, <c>BL844</c>, <c>M112x160</c>, <c>WH78</c>.
    /// </summary>
    /// <remarks>
    /// Case and blanks do not matter, and the standard may stand before it (<c>ISO 606 16B-2</c>, <c>ANSI 80</c>, <c>#80</c>). A
    /// maker's prefix is not read away: what it says beyond the size is not known here.
    /// </remarks>
    /// <returns>The type; null when no such type is known, or a conveyor chain is not made in that pitch.</returns>
    public static ChainType? Find(string? designation)
    {
        var name = Normal(designation ?? "");
        if (ByName.TryGetValue(name, out var row)) return row.WithStrands(1);

        var dash = name.LastIndexOf('-');
        if (dash > 0 && int.TryParse(name.AsSpan(dash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var strands)
            && strands is >= 1 and <= MostStrands && ByName.TryGetValue(name[..dash], out row)
            && (strands == 1 || row.IsMultiStrand))
            return row.WithStrands(strands);

        var cross = name.LastIndexOf('X');
        return cross > 0
            && double.TryParse(
                name.AsSpan(cross + 1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var pitchMm)
            && ByName.TryGetValue(name[..cross], out row) && row.WithStrands(1) is var type
            && type.PitchChoicesMm.Contains(pitchMm)
                ? type.WithPitch(pitchMm)
                : null;
    }

    /// <summary>
    /// The strands that a designation names, such as 2 of <c>24A-2</c>; null where it names none, or is not known.
    /// </summary>
    public static int? StrandsNamed(string designation) =>
        designation.LastIndexOf('-') is > 0 and var dash
            && int.TryParse(designation.AsSpan(dash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out _)
            && Find(designation) is { RowSpacingMm: not null } type
            ? type.Strands
            : null;

    /// <summary>
    /// Types in whose names, kind or standard every word of a text occurs; those whose name begins with it first.
    /// </summary>
    public static IReadOnlyList<ChainType> Search(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0) return All;
        return [.. All
            .Where(type => words.All(word => Described(type).Contains(word, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(type => type.Designation.StartsWith(words[0], StringComparison.OrdinalIgnoreCase) ? 0 : 1)];
    }

    private static string Described(ChainType type) => string.Create(CultureInfo.InvariantCulture,
        $"{type.Designation} {string.Join(' ', type.AlsoCalled)} {type.Counterpart} {type.Standard} "
        + $"{type.Family} {type.Family.Words} {type.PitchMm?.Value:0.###} mm");

    private static string Normal(string designation)
    {
        var name = string.Concat(designation.Where(c => !char.IsWhiteSpace(c)))
            .ToUpperInvariant().Replace('×', 'X').Replace('–', '-');
        // A standard may be followed by its number again: "ANSI #80".
        while (Prefixes.FirstOrDefault(p => name.StartsWith(p, StringComparison.Ordinal)) is { } prefix)
            name = name[prefix.Length..].TrimStart('-', ':');
        return name;
    }
}
