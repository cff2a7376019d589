using CsvHelper;
using WearWatch.Chains;
using WearWatch.Worker.Intake;

namespace WearWatch.Worker.Files;

/// <summary>Reads a file of chains, readings or events row by row, so that a million rows need no more memory than ten.</summary>
public sealed class PlantFile
{
    private readonly ImportFile file;
    private readonly TimeZoneInfo zone;
    private readonly List<FileItem> aboutHeader = [];
    private readonly Dictionary<string, int> columns = [];
    private int columnCount;

    /// <summary>Looks at the header of a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="zone">The plant's time zone, for times that name none.</param>
    public PlantFile(ImportFile file, TimeZoneInfo zone)
    {
        (this.file, this.zone) = (file, zone);
        using (var bytes = file.Open())
        {
            if (FileText.WhyNotText(bytes) is { Length: > 0 } reason)
            {
                Refuse(0, "", reason);
                return;
            }
        }

        using var sheet = new Sheet(file.Open());
        Columns = TakeHeader(sheet);
    }

    /// <summary>What is in the file.</summary>
    public FileKind Kind => Columns?.Kind ?? FileKind.Unknown;

    private FileColumns? Columns { get; }

    /// <summary>The rows from the first to the last; what is wrong with the header comes before them.</summary>
    /// <param name="known">The chains that are registered already, by name: what a row leaves out stays as it was.</param>
    /// <param name="position">Told how many bytes have been read.</param>
    public IEnumerable<FileItem> Rows(IReadOnlyDictionary<string, ChainCard>? known = null, Action<long>? position = null)
    {
        foreach (var item in aboutHeader) yield return item;
        if (aboutHeader.Exists(i => i is FileItem.Unreadable)) yield break;

        using var stream = file.Open();
        using var sheet = new Sheet(stream);
        var fields = new RowFields(columns, zone);
        sheet.Next();
        while (Next(sheet) is { } more)
        {
            if (more is FileItem.Unreadable lost) yield return lost;
            if (more is not FileItem.Noted) yield break;
            fields.Take(sheet.Fields);
            foreach (var item in Read(sheet, fields, known ?? new Dictionary<string, ChainCard>())) yield return item;
            position?.Invoke(stream.CanSeek ? stream.Position : 0);
        }
    }

    /// <summary>Goes to the next row; null at the end, unreadable when the rest of the file cannot be told apart.</summary>
    private static FileItem? Next(Sheet sheet)
    {
        try
        {
            return sheet.Next() ? new FileItem.Noted(sheet.Line, "", "") : null;
        }
        catch (CsvFormatException)
        {
            return new FileItem.Unreadable(sheet.Line + 1, "", "A line without end. The rest of the file was not read.");
        }
    }

    private IEnumerable<FileItem> Read(Sheet sheet, RowFields fields, IReadOnlyDictionary<string, ChainCard> known)
    {
        if (WhyBroken(sheet) is { } reason) return [new FileItem.Unreadable(sheet.Line, "", reason, fields.Text("chain"))];
        FileItem? item = Kind switch
        {
            FileKind.Chains => ChainText.Read(fields, known) is { } card ? new FileItem.Chain(sheet.Line, card) : null,
            FileKind.Readings => ReadingText.Read(fields) is { } reading ? new FileItem.Measured(sheet.Line, reading, ReadingText.Length(fields)) : null,
            _ => EventText.Read(fields) is { } happening ? new FileItem.Happened(sheet.Line, happening) : null,
        };
        return item is not null ? [item] : fields.Faults.Select(f => new FileItem.Unreadable(sheet.Line, f.Column, f.Reason, fields.Text("chain")));
    }

    private string? WhyBroken(Sheet sheet) => sheet.WhyBroken ?? (sheet.Fields.Count == columnCount
        ? null
        : FormattableString.Invariant($"{sheet.Fields.Count} fields where the header has {columnCount}."));

    private FileColumns? TakeHeader(Sheet sheet)
    {
        try
        {
            if (!sheet.Next())
            {
                Refuse(1, "", "The file has no header row.");
                return null;
            }
        }
        catch (CsvFormatException)
        {
            Refuse(1, "", "The first line has no end. Is this a CSV file?");
            return null;
        }

        columnCount = sheet.Fields.Count;
        string[] header = [.. sheet.Fields.Select(f => f.Trim().ToLowerInvariant())];
        var told = FileColumns.Tell(header, file.Name);
        if (told is null) RefuseHeader(sheet.Line, header);
        else Match(told, header, sheet.Line);
        return told;
    }

    private void RefuseHeader(int line, string[] header) => Refuse(line, header[0], header is [var one] && (one.Contains(';') || one.Contains('\t'))
        ? "The columns are not separated by commas. Save the file as CSV with commas."
        : "The header is not that of chains (chain, pitch_mm, ...), readings (chain, taken_at, counter_h, tool, pitches, length, unit) or events (chain, event, ...).");

    private void Match(FileColumns told, string[] header, int line)
    {
        for (var i = 0; i < header.Length; i++)
        {
            if (!told.All.Contains(header[i])) aboutHeader.Add(new FileItem.Noted(line, header[i], "Unknown column: it was not read."));
            else if (!columns.TryAdd(header[i], i)) Refuse(line, header[i], "The column stands twice.");
        }

        foreach (var missing in told.Required.Where(c => !columns.ContainsKey(c))) Refuse(line, missing, "The column is missing.");
        if (!told.OneOf.Any(columns.ContainsKey)) Refuse(line, told.OneOf[0], $"One of the columns {string.Join(", ", told.OneOf)} is needed.");
    }

    private void Refuse(int line, string column, string reason) => aboutHeader.Add(new FileItem.Unreadable(line, column, reason));
}
