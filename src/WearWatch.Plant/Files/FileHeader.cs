namespace WearWatch.Plant.Files;

/// <summary>The header row of a file: what is in the file, and in which column.</summary>
public sealed class FileHeader
{
    private readonly Dictionary<string, int> columns = [];
    private readonly List<FileItem> remarks = [];

    private FileHeader()
    {
    }

    /// <summary>What is in the file.</summary>
    public FileKind Kind { get; private set; }

    /// <summary>How the file is written.</summary>
    public FileDialect Dialect { get; private set; } = FileDialect.Ours;

    /// <summary>How many columns every row must have.</summary>
    public int Count { get; private set; }

    /// <summary>Where each known column stands.</summary>
    public IReadOnlyDictionary<string, int> Columns => columns;

    /// <summary>What is to be said about it.</summary>
    public IReadOnlyList<FileItem> Remarks => remarks;

    /// <summary>Whether the rows can be read.</summary>
    public bool IsUsable => !remarks.Exists(r => r is FileItem.Unreadable);

    /// <summary>Reads the header of a file.</summary>
    public static FileHeader Read(ImportFile file)
    {
        var header = new FileHeader();
        using (var bytes = file.Open())
        {
            if (FileText.WhyNotText(bytes) is { Length: > 0 } reason)
            {
                header.Refuse(0, "", reason);
                return header;
            }
        }

        header.Dialect = DialectReader.Read(file);
        using var rows = new CsvRowReader(header.Dialect.Open(file), header.Dialect.Separator);
        if (rows.Next()) header.Take(rows, file.Name);
        else header.Refuse(1, "", rows.IsCutOff
            ? "The first line has no end. Is this a CSV file?"
            : "The file has no header row.");
        return header;
    }

    private void Take(CsvRowReader rows, string fileName)
    {
        string[] names = [.. rows.Fields.Select(f => f.Trim().ToLowerInvariant())];
        Count = names.Length;
        if (FileColumns.Tell(names, fileName) is not { } told)
        {
            Refuse(rows.Line, names[0],
                "The header is not that of chains (chain, pitch_mm, ...), readings (chain, taken_at, counter_h, tool, pitches, "
                + "length, unit), events (chain, event, ...) or measures of links (chain, place, one_link, ..., unit).");
            return;
        }

        Kind = told.Kind;
        if (Dialect.Words.Length > 0) remarks.Add(new FileItem.Noted(rows.Line, "", Dialect.Words));
        for (var i = 0; i < names.Length; i++)
        {
            if (!told.All.Contains(names[i]))
                remarks.Add(new FileItem.Noted(rows.Line, names[i], "Unknown column: it was not read."));
            else if (!columns.TryAdd(names[i], i)) Refuse(rows.Line, names[i], "The column stands twice.");
        }

        foreach (var missing in told.Required.Where(c => !columns.ContainsKey(c)))
            Refuse(rows.Line, missing, "The column is missing.");
        if (!told.OneOf.Any(columns.ContainsKey))
            Refuse(rows.Line, told.OneOf[0], $"The column is missing: one of {string.Join(", ", told.OneOf)} is needed.");
    }

    private void Refuse(int line, string column, string reason) => remarks.Add(new FileItem.Unreadable(line, column, reason));
}
