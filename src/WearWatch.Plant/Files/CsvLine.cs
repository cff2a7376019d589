namespace WearWatch.Plant.Files;

/// <summary>Writes a row of a CSV file (RFC 4180) that may have another number of fields than its header.</summary>
internal static class CsvLine
{
    /// <summary>
    /// The row without its line break; a line break in a field becomes a blank, since no column of ours takes one.
    /// </summary>
    public static string Of(IEnumerable<string> fields, char separator) =>
        string.Join(separator, fields.Select(field => Field(field.ReplaceLineEndings(" "), separator)));

    private static string Field(string text, char separator) => text.AsSpan().ContainsAny(separator, '"')
        ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
        : text;
}
