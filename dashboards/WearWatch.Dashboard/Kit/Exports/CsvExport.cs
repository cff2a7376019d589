using System.Globalization;
using System.Net.Mime;
using System.Text;

namespace WearWatch.Dashboard.Kit.Exports;

/// <summary>Writes tables as RFC 4180 files: UTF-8, decimal point, a header row, units in the names of the columns.</summary>
public static class CsvExport
{
    private static readonly System.Buffers.SearchValues<char> Special = System.Buffers.SearchValues.Create(",\"\r\n");

    // The last four are the full-width forms of the first four.
    private const string Formula = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    /// <summary>A file to download.</summary>
    public static IResult File(string fileName, IReadOnlyList<string> header, IEnumerable<IReadOnlyList<object?>> rows) =>
        Results.File(Encoding.UTF8.GetBytes(Text(header, rows)), MediaTypeNames.Text.Csv, fileName);

    /// <summary>The text of the file.</summary>
    public static string Text(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<object?>> rows) =>
        Lines(rows.Prepend(header));

    /// <summary>Rows of the file.</summary>
    public static string Lines(IEnumerable<IReadOnlyList<object?>> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows) text.AppendJoin(',', row.Select(Field)).Append("\r\n");
        return text.ToString();
    }

    // A spreadsheet takes a text that begins with one of these for a formula, behind blanks, tabs and line ends too, and runs it.
    private static string Field(object? value)
    {
        var text = value switch
        {
            null or double.NaN => "",
            double number => number.ToString("G10", CultureInfo.InvariantCulture),
            bool yes => yes ? "yes" : "no",
            DateTimeOffset moment => moment.ToString("yyyy-MM-ddTHH:mm:ssK", CultureInfo.InvariantCulture),
            string words when words.TrimStart() is [var first, ..] && Formula.Contains(first) => "'" + words,
            IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString() ?? "",
        };
        return text.AsSpan().ContainsAny(Special) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }
}
