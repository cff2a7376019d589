using System.Globalization;
using System.Reflection;
using WearWatch.Chains.Families;

namespace WearWatch.Chains;

/// <summary>A row of the catalogue's tables (Types/*.csv): one size, which may be made with several strands or pitches.</summary>
/// <remarks>
/// The tables are ours and plain: no quotes, no commas inside a value, <c>#</c> before a remark. Their form is told in
/// docs/units-and-formats.md.
/// </remarks>
internal sealed class ChainTypeText(IReadOnlyDictionary<string, string> cells)
{
    // From memory: the pitches of ISO 1977 and DIN 8165.
    private static readonly double[] ConveyorPitchesMm = [40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000];

    public string Designation => Cell("designation");

    public ChainFamily Family => ChainFamily.Named(Cell("family"));

    public string[] Names => [Designation, .. Also];

    public int ListedStrands => Math.Max(1, Cell("tensile_kn").Split('/').Length);

    /// <summary>Only a chain with a row spacing can have several strands.</summary>
    public bool IsMultiStrand => Cell("row_spacing_mm").Length > 0;

    /// <summary>The same chain by the other standard; null where there is none.</summary>
    private ChainTypeText? Twin { get; set; }

    private string[] Also => Cell("also").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    public ChainType WithStrands(int strands) => new()
    {
        Designation = IsMultiStrand ? string.Create(CultureInfo.InvariantCulture, $"{Designation}-{strands}") : Designation,
        AlsoCalled = Also,
        Counterpart = Cell("counterpart"),
        Standard = Cell("standard"),
        Family = Family,
        Strands = strands,
        PitchMm = Number("pitch_mm"),
        PitchChoicesMm = PitchChoices(),
        RollerMm = Number("roller_mm"),
        LargeRollerMm = Number("large_roller_mm"),
        BushMm = Number("bush_mm"),
        InnerWidthMm = Number("inner_width_mm"),
        PinMm = Number("pin_mm"),
        BushLengthMm = Number("bush_length_mm") ?? Twin?.Number("bush_length_mm"),
        LinkDiameterMm = Number("link_diameter_mm"),
        PlateMm = Number("plate_mm"),
        Lacing = Cell("lacing"),
        RowSpacingMm = Number("row_spacing_mm"),
        TensileKilonewtons = OfStrands("tensile_kn", strands),
        MeasuringForceNewtons = OfStrands("measuring_n", strands),
        NewLengthTolerancePercent = Number("longer_pct"),
    };

    /// <summary>The rows of all tables, in the order of the kinds that they are of.</summary>
    public static IReadOnlyList<ChainTypeText> ReadAll()
    {
        List<ChainTypeText> rows = [.. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith("types/", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(name => Read(name).ToList()).OrderBy(table => table[0].Family.Place).SelectMany(table => table)];
        // Sizes of ASME and ISO that are the same chain share what is known of one; heavy ones have other plates and bushes.
        foreach (var row in rows.Where(row => row.Cell("standard") == "ASME B29.1" && !row.Designation.EndsWith('H')))
            row.Twin = rows.Find(other => other.Designation == row.Cell("counterpart"));
        return rows;
    }

    private static IEnumerable<ChainTypeText> Read(string table)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(table)
            ?? throw new InvalidOperationException($"The table {table} is not in the assembly.");
        using var reader = new StreamReader(stream);
        string[]? columns = null;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#')) continue;
            var cells = line.Split(',');
            if (columns is null) columns = cells;
            else yield return new ChainTypeText(columns.Zip(cells).ToDictionary(p => p.First, p => p.Second));
        }
    }

    // No pitch is shorter than the bush is thick: its neighbour's would stand in the same place.
    private double[] PitchChoices() => Cell("pitch_range_mm").Split('-') is [var low, var high]
        ? [.. ConveyorPitchesMm.Where(p => p >= Parse(low) && p <= Parse(high) && !(p <= Number("bush_mm")?.Value))]
        : [];

    /// <summary>A value for so many strands; of ASME chains the strength is a multiple of the single one (from memory).</summary>
    private Sourced? OfStrands(string column, int strands)
    {
        var values = Cell(column).Split('/');
        if (strands <= values.Length) return Number(values[strands - 1], Cell("source"));
        return values is [var single] && Cell("standard") == "ASME B29.1" && Number(single, "") is { } one
            ? Sourced.FromMemory(one.Value * strands)
            : null;
    }

    private Sourced? Number(string column) => Number(Cell(column), Cell("source"));

    private static Sourced? Number(string cell, string source) => cell switch
    {
        "" => null,
        [.. var digits, '?'] => Sourced.FromMemory(Parse(digits)),
        _ => new Sourced(Parse(cell), Sourced.List + source, IsVerified: true),
    };

    private static double Parse(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);

    private string Cell(string column) => cells.GetValueOrDefault(column, "");
}
