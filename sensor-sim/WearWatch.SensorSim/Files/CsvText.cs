using System.Globalization;

namespace WearWatch.SensorSim.Files;

/// <summary>Writes rows by RFC 4180; numbers with a decimal point, times by ISO 8601.</summary>
internal static class CsvText
{
    /// <summary>Writes one row.</summary>
    public static void Write(TextWriter writer, params ReadOnlySpan<string> cells)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            if (i > 0) writer.Write(',');
            writer.Write(Quoted(cells[i]));
        }

        writer.Write("\r\n");
    }

    /// <summary>A number with at most so many digits after the point; empty for null.</summary>
    public static string Number(double? value, int decimals) => value is { } number
        ? Math.Round(number, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture)
        : "";

    /// <summary>A moment to the second with the offset of its time zone; empty for null.</summary>
    public static string Moment(DateTimeOffset? moment) =>
        moment?.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture) ?? "";

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\r\n") < 0
        ? cell
        : "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
