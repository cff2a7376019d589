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

    /// <summary>The names of its columns as they are written; every row must have as many fields.</summary>
    public IReadOnlyList<string> Names { get; private set; } = [];

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
            if (FileText.WhyNotText(bytes) is { } reason)
            {
                header.Refuse(0, "", reason);
                return header;
            }
        }

        header.Dialect = DialectReader.Read(file);
        using var rows = new CsvRowReader(header.Dialect.Open(file), header.Dialect.Separator);
        if (rows.Next()) header.Take(rows, file);
        else header.Refuse(1, "", rows.IsCutOff
            ? Phrase.Of($"The first line has no end. Is this a CSV file?")
            : $"The file has no header row.");
        return header;
    }

    private void Take(CsvRowReader rows, ImportFile file)
    {
        Names = [.. rows.Fields.Select(f => f.Trim())];
        string[] names = [.. Names.Select(file.Choice.NameOf)];
        if ((FileColumns.Of(file.Choice.Kind) ?? FileColumns.Tell(names, file.Name)) is not { } told)
        {
            Refuse(rows.Line, Names[0],
                $"The header is not that of a file that is known. Known are chains (chain, pitch_mm, ...), readings (chain, "
                + $"taken_at, counter_h, tool, pitches, length, unit), events (chain, event, ...). Links have (chain, "
                + $"place, one_link, ..., unit), parts (chain, part, value, unit), work orders (swap, order_state, ...).");
            return;
        }

        Kind = told.Kind;
        if (file.Sheets.Count > 0) NoteSheet(rows.Line, file.Sheets);
        else if (!Dialect.Words.IsEmpty) remarks.Add(new FileItem.Noted(rows.Line, "", Dialect.Words));
        for (var i = 0; i < names.Length; i++)
        {
            if (names[i] is "" or FileColumns.WhyRefused) continue;
            if (!told.All.Contains(names[i]))
                remarks.Add(new FileItem.Noted(rows.Line, names[i], $"Unknown column: it was not read."));
            else if (!columns.TryAdd(names[i], i)) Refuse(rows.Line, names[i], $"The column stands twice.");
        }

        foreach (var missing in told.MissingIn(columns.Keys)) Refuse(rows.Line, missing.Column, missing.Reason);
    }

    private void NoteSheet(int line, IReadOnlyList<string> sheets) => remarks.Add(new FileItem.Noted(line, "", sheets.Count > 1
        ? Phrase.Of($"Read from the sheet '{sheets[0]}'. Not read: {string.Join(", ", sheets.Skip(1))}.")
        : $"Read from the sheet '{sheets[0]}'."));

    private void Refuse(int line, string column, Phrase reason) => remarks.Add(new FileItem.Unreadable(line, column, reason));
}
