using System.Text.Json;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>The refused rows of a file, to be written as a file of their own: corrected, and imported again.</summary>
/// <remarks>Rows stand as they were written, with why at their end; the good ones were taken, so nothing comes twice.</remarks>
/// <param name="Head">The header as it was written.</param>
/// <param name="Separator">What stands between columns.</param>
/// <param name="Rows">The rows, in the order of the file.</param>
public sealed record RefusedRows(string Head, char Separator, IReadOnlyList<RefusedLine> Rows)
{
    /// <summary>More rows are not kept: a file with so many faults is exported anew.</summary>
    public const int Most = 10_000;

    private const string Kept = "{\"Head\":";

    /// <summary>Those of a file, in its own dialect; null when no row was refused by itself.</summary>
    /// <param name="file">The file, as text.</param>
    /// <param name="report">What an import made of it.</param>
    public static RefusedRows? Of(ImportFile file, FileReport report)
    {
        if (report.RefusedLines.Count == 0) return null;
        var dialect = DialectReader.Read(file);
        using var rows = new CsvRowReader(dialect.Open(file), dialect.Separator);
        if (!rows.Next()) return null;
        // A file that was refused before has why at its end already.
        var width = rows.Fields.Count(f => f != FileColumns.WhyRefused);
        var head = Line(rows.Fields);
        var whyOf = report.Remarks.Where(r => r.Kind == RemarkKind.Refused).ToLookup(r => r.Line);
        var refused = new List<RefusedLine>();
        while (rows.Next() && refused.Count < Most)
        {
            if (report.RefusedLines.Contains(rows.Line)) refused.Add(new(Line(rows.Fields), Why(whyOf[rows.Line])));
        }

        return refused.Count > 0 ? new(head, dialect.Separator, refused) : null;

        string Line(IReadOnlyList<string> fields) => CsvLine.Of(fields.Take(width), dialect.Separator);
    }

    /// <summary>The file whose rows were kept, with why in the reader's language.</summary>
    /// <param name="kept">What <see cref="ToKept"/> made; or the file itself, as it was kept before languages.</param>
    /// <param name="said">Puts a reason into the language.</param>
    public static string TextOf(string kept, Func<Phrase, string> said) => kept.StartsWith(Kept, StringComparison.Ordinal)
        ? JsonSerializer.Deserialize<RefusedRows>(kept)!.Text(said)
        : kept;

    /// <summary>The rows as the text of a column.</summary>
    public string ToKept() => JsonSerializer.Serialize(this);

    /// <summary>The file.</summary>
    /// <param name="said">Puts a reason into the reader's language.</param>
    public string Text(Func<Phrase, string> said) =>
        string.Concat(Rows.Select(row => (row.Fields, Why: said(row.Why))).Prepend((Fields: Head, Why: FileColumns.WhyRefused))
            .Select(row => $"{row.Fields}{Separator}{CsvLine.Of([row.Why], Separator)}\r\n"));

    private static Phrase Why(IEnumerable<RowRemark> remarks) => Phrase.Join(" ", remarks.Select(r =>
        r.Column.Length > 0 ? Phrase.Join("", [Phrase.Verbatim(r.Column + ": "), r.Reason]) : r.Reason));
}
