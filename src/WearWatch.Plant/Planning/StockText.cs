using System.Text;
using WearWatch.Planning.Supply;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Planning;

/// <summary>
/// Reads a list of the store: pasted from a spreadsheet, or as CSV. Tabs, semicolons and decimal commas are read too.
/// </summary>
/// <remarks>
/// Columns: <c>part</c> (chain, connecting_link, offset_link, sprocket; chain where it is empty), <c>chain_type</c>,
/// <c>in_stock</c>; further <c>lead_days</c>, <c>express_days</c>, <c>pack</c>, <c>price</c>. What a row leaves out stays as it
/// was.
/// </remarks>
public static class StockText
{
    private const double MostDays = 2000;

    private static readonly Dictionary<string, PartKind> Kinds = Enum.GetValues<PartKind>().ToDictionary(FileWords.Of);

    /// <summary>Its columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["part", "chain_type", "in_stock", "lead_days", "express_days", "pack", "price"];

    /// <summary>The parts with their stock, and what is wrong, line by line.</summary>
    /// <param name="text">The list with its header.</param>
    /// <param name="known">What is on record.</param>
    public static (IReadOnlyList<Spare> Spares, IReadOnlyList<Phrase> Faults) Read(string text, IReadOnlyList<Spare> known)
    {
        var file = new ImportFile("stock", () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "" };
        var dialect = DialectReader.Read(file);
        using var rows = new CsvRowReader(dialect.Open(file), dialect.Separator);
        if (!rows.Next()) return ([], [$"The list is empty; it needs a header row."]);
        string[] names = [.. rows.Fields.Select(f => f.Trim().ToLowerInvariant())];
        if (!names.Contains("chain_type") || !names.Contains("in_stock"))
            return ([], [$"The header needs the columns chain_type and in_stock; it may have {string.Join(", ", Columns)}."]);
        var columns = names.Index().DistinctBy(c => c.Item).ToDictionary(c => c.Item, c => c.Index);
        var fields = new RowFields(columns, TimeZoneInfo.Utc, dialect);
        var (spares, faults) = (new List<Spare>(), new List<Phrase>());
        while (rows.Next())
        {
            fields.Take(rows.Fields);
            var spare = SpareOf(fields, known);
            if (rows.WhyBroken is { } broken) fields.Fault("", broken);
            if (fields.Faults.Count == 0) spares.Add(spare);
            faults.AddRange(fields.Faults.Select(f => Phrase.Of($"Line {rows.Line}: {f.Column}: {f.Reason}")));
        }

        return (spares, faults);
    }

    private static Spare SpareOf(RowFields fields, IReadOnlyList<Spare> known)
    {
        var part = new Part(fields.Word("part", Kinds) ?? PartKind.Chain, fields.Needed("chain_type", $"such as 16B-1."));
        fields.Needed("in_stock", $"pitches of chain, pieces of all else.");
        var before = known.FirstOrDefault(s => s.Part == part) ?? new Spare { Part = part };
        return before with
        {
            InStock = fields.Whole("in_stock", 0, 10_000_000) ?? before.InStock,
            LeadTime = fields.Number("lead_days", 0, MostDays) is { } lead ? TimeSpan.FromDays(lead) : before.LeadTime,
            ExpressLeadTime = fields.Number("express_days", 0, MostDays) is { } haste
                ? TimeSpan.FromDays(haste) : before.ExpressLeadTime,
            PackSize = fields.Whole("pack", 1, 1_000_000) ?? before.PackSize,
            Price = fields.Number("price", 0, 1e9) ?? before.Price,
        };
    }
}
