using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>How a file is read, for a person to check before it is taken in: its dialect, its columns, its first rows.</summary>
public sealed record FileLook
{
    private const int RowsShown = 5;

    /// <summary>What is in it.</summary>
    public required FileKind Kind { get; init; }

    /// <summary>How it is written.</summary>
    public required FileDialect Dialect { get; init; }

    /// <summary>The sheets of a workbook, the one that is read first; empty for a file of text.</summary>
    public required IReadOnlyList<string> Sheets { get; init; }

    /// <summary>Its columns, each with our name; empty for one that is left out.</summary>
    public required IReadOnlyList<(string Theirs, string Ours)> Columns { get; init; }

    /// <summary>The first rows, as they are written.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Rows { get; init; }

    /// <summary>What is said of it: what is remembered, and what a person says now.</summary>
    public required FileChoice Choice { get; init; }

    /// <summary>Whether its columns can be looked at: it is a text, or a sheet that can be read.</summary>
    public bool HasColumns => Columns.Count > 0;

    /// <summary>Looks at a file.</summary>
    /// <param name="file">The file, as text.</param>
    public static FileLook Of(ImportFile file)
    {
        var header = FileHeader.Read(file);
        var known = FileColumns.Of(header.Kind)?.All ?? [];
        var rows = new List<IReadOnlyList<string>>();
        if (header.Names.Count > 0)
        {
            using var reader = new CsvRowReader(header.Dialect.Open(file), header.Dialect.Separator);
            reader.Next();
            while (rows.Count < RowsShown && reader.Next()) rows.Add(reader.Fields);
        }

        return new FileLook
        {
            Kind = header.Kind,
            Dialect = header.Dialect,
            Sheets = file.Sheets,
            Columns = [.. header.Names.Select(n => (n, file.Choice.NameOf(n) is var ours && known.Contains(ours) ? ours : ""))],
            Rows = rows,
            Choice = file.Choice,
        };
    }
}
