using System.Globalization;
using MiniExcelLibs;

namespace WearWatch.Plant.Files;

/// <summary>Reads a sheet of a workbook (Office Open XML, <c>.xlsx</c>) as the text that a CSV file of it would hold.</summary>
public static class Workbook
{
    /// <summary>The text of a sheet may have so many bytes: a million readings have about 60 MB.</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    /// <summary>Whether a file is a workbook by its name.</summary>
    public static bool IsNamedSo(string name) => name.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase);

    /// <summary>The text of a workbook's sheet; any other file, and a workbook that cannot be read, as it is.</summary>
    /// <remarks>A row keeps its number as its line, and numbers and dates are written as our own files have them.</remarks>
    public static ImportFile AsText(ImportFile file)
    {
        if (!IsNamedSo(file.Name)) return file;
        try
        {
            using var book = file.Open();
            if (!IsArchive(book)) return file;
            var sheets = MiniExcel.GetSheetNames(book);
            foreach (var sheet in sheets.Contains(file.Choice.Sheet) ? [file.Choice.Sheet] : sheets)
            {
                if (TextOf(book, sheet) is not { } text) continue;
                return file with
                {
                    Open = () => new MemoryStream(text, writable: false),
                    Sheets = [sheet, .. sheets.Where(s => s != sheet)],
                    Choice = file.Choice with { Separator = ',', CodePage = null },
                };
            }
        }
        catch (Exception broken) when (broken is InvalidDataException or IOException or FormatException or ArgumentException
            or InvalidOperationException or System.Xml.XmlException or KeyNotFoundException or NullReferenceException)
        {
            // Left as it is, the file is refused with what to do.
        }

        return file;
    }

    private static bool IsArchive(Stream book)
    {
        Span<byte> head = stackalloc byte[4];
        var is4 = book.ReadAtLeast(head, 4, throwOnEndOfStream: false) == 4;
        book.Position = 0;
        return is4 && head.SequenceEqual("PK\x03\x04"u8);
    }

    private static byte[]? TextOf(Stream book, string sheet)
    {
        book.Position = 0;
        using var text = new MemoryStream();
        using var writer = new StreamWriter(text);
        var holdsSomething = false;
        foreach (IDictionary<string, object?> row in MiniExcel.Query(book, useHeaderRow: false, sheetName: sheet))
        {
            string[] cells = [.. row.Values.Select(Cell)];
            var isBlank = cells.All(c => c.Length == 0);
            holdsSomething |= !isBlank;
            writer.Write((isBlank ? "" : CsvLine.Of(cells, ',')) + "\n");
            if (text.Length > MostBytes) throw new InvalidDataException("The sheet is too large.");
        }

        writer.Flush();
        return holdsSomething ? text.ToArray() : null;
    }

    /// <summary>A cell in our own form.</summary>
    private static string Cell(object? value) => value switch
    {
        null => "",
        double number => RowFields.Text(number),
        DateTime { TimeOfDay.Ticks: 0 } day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        DateTime moment => moment.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture),
        bool yes => yes ? "yes" : "no",
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };
}
