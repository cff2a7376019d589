using WearWatch.Chains;

namespace WearWatch.Plant.Files;

/// <summary>
/// Reads a file of one kind (<see cref="FileKind"/>) row by row, so that a million rows need no more memory than ten.
/// </summary>
/// <param name="file">The file.</param>
/// <param name="zone">The plant's time zone, for times that name none.</param>
public sealed class PlantFile(ImportFile file, TimeZoneInfo zone)
{
    private static readonly Dictionary<string, ChainCard> Nobody = [];

    private readonly FileHeader header = FileHeader.Read(file);

    /// <summary>What is in the file.</summary>
    public FileKind Kind => header.Kind;

    /// <summary>The rows from the first to the last; what is to be said about the header comes before them.</summary>
    /// <param name="known">The chains that are registered already, by name: what a row leaves out stays as it was.</param>
    /// <param name="position">Told how many bytes have been read.</param>
    public IEnumerable<FileItem> Rows(IReadOnlyDictionary<string, ChainCard>? known = null, Action<long>? position = null)
    {
        foreach (var remark in header.Remarks) yield return remark;
        if (!header.IsUsable) yield break;

        using var stream = header.Dialect.Open(file);
        using var rows = new CsvRowReader(stream, header.Dialect.Separator);
        var fields = new RowFields(header.Columns, zone, header.Dialect);
        rows.Next();
        while (rows.Next())
        {
            fields.Take(rows.Fields);
            foreach (var item in Read(rows, fields, known ?? Nobody)) yield return item;
            position?.Invoke(stream.CanSeek ? stream.Position : 0);
        }

        if (rows.IsCutOff)
            yield return new FileItem.Unreadable(rows.Line + 1, "", $"A line without end. The rest of the file was not read.");
    }

    private IEnumerable<FileItem> Read(CsvRowReader rows, RowFields fields, IReadOnlyDictionary<string, ChainCard> known)
    {
        if (WhyBroken(rows) is { } reason) return [new FileItem.Unreadable(rows.Line, "", reason, fields.Text("chain"))];
        FileItem? item = Kind switch
        {
            FileKind.Chains => ChainText.Read(fields, known) is { } card ? new FileItem.Chain(rows.Line, card) : null,
            FileKind.Readings => ReadingText.Read(fields) is { } reading ? new FileItem.Measured(rows.Line, reading) : null,
            FileKind.LinkMeasures => LinkMeasureText.Read(fields, rows.Line),
            FileKind.PartReadings => PartReadingText.Read(fields, rows.Line),
            FileKind.WorkOrders => WorkOrderText.Read(fields, rows.Line),
            _ => EventText.Read(fields) is { } happening ? new FileItem.Happened(rows.Line, happening) : null,
        };
        return item is not null
            ? [item]
            : fields.Faults.Select(f => new FileItem.Unreadable(rows.Line, f.Column, f.Reason, fields.Text("chain")));
    }

    private Phrase? WhyBroken(CsvRowReader rows) => rows.WhyBroken ?? (rows.Fields.Count == header.Names.Count
        ? null
        : Phrase.Of($"{rows.Fields.Count} fields where the header has {header.Names.Count}."));
}
