using System.IO.Compression;
using System.Text;
using WearWatch.Plant.Files;

namespace WearWatch.Worker.Tests.Files;

/// <summary>Files in other encodings, and what is no text at all.</summary>
public sealed class FileEncodingTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    [Fact]
    public void Text_in_an_encoding_that_no_spreadsheet_writes_is_refused_in_plain_words()
    {
        byte[] bytes = [.. Encoding.UTF32.GetPreamble(), .. Encoding.UTF32.GetBytes($"{A.ReadingsHeader}\n{A.Row()}\n")];
        var fault = Assert.IsType<FileItem.Unreadable>(Assert.Single(Rows(A.File("readings.csv", bytes))));
        Assert.Contains("CSV UTF-8", fault.Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_order_mark_of_UTF_8_does_no_harm()
    {
        var file = A.File("readings.csv",
            [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes($"{A.ReadingsHeader}\nFörderer,,100,tape,,40,1020,mm,\n")]);
        Assert.Equal("Förderer", Assert.IsType<FileItem.Measured>(Assert.Single(Rows(file))).Reading.Chain);
    }

    [Fact]
    public void A_row_in_another_code_page_is_refused_and_the_others_are_read()
    {
        byte[] bytes = [.. Encoding.UTF8.GetBytes($"{A.ReadingsHeader}\n"),
            .. Encoding.Latin1.GetBytes("Förderer,,100,tape,,40,1020,mm,\n"), .. Encoding.UTF8.GetBytes(A.Row("Förderer 2"))];
        var items = Rows(A.File("readings.csv", bytes)).ToList();
        Assert.Contains("UTF-8", Assert.IsType<FileItem.Unreadable>(items[0]).Reason.ToString(), StringComparison.Ordinal);
        Assert.IsType<FileItem.Measured>(items[1]);
    }

    [Fact]
    public void What_is_no_text_is_refused_in_plain_words()
    {
        using var zipped = new MemoryStream();
        using (var zip = new GZipStream(zipped, CompressionLevel.Fastest, leaveOpen: true)) zip.Write(
            Encoding.UTF8.GetBytes(A.ReadingsHeader));
        (byte[] Bytes, string Reason)[] files =
        [
            ([0x50, 0x4B, 0x03, 0x04, 0, 0], "spreadsheet"),
            (zipped.ToArray(), "compressed"),
            ([1, 2, 0, 3], "not text"),
            ([], "empty"),
        ];
        foreach (var (bytes, reason) in files)
        {
            var fault = Assert.IsType<FileItem.Unreadable>(Assert.Single(Rows(A.File("readings.csv", bytes))));
            Assert.Contains(reason, fault.Reason.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_line_without_end_is_refused_without_being_kept_in_memory()
    {
        var file = A.File("readings.csv", $"{A.ReadingsHeader}\n{A.Row()}\n{new string('x', 3_000_000)}");
        var items = Rows(file).ToList();
        Assert.IsType<FileItem.Measured>(items[0]);
        Assert.Equal(3, Assert.IsType<FileItem.Unreadable>(items[^1]).Line);
    }

    private static IEnumerable<FileItem> Rows(ImportFile file) => new PlantFile(file, Vienna).Rows();
}
