using System.Text;
using WearWatch.Dashboard.Engineer.Report;
using WearWatch.Dashboard.Tests.Lifting;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Tests.Paper;

/// <summary>What is printed flows from page to page.</summary>
public sealed class PaperSheetTests
{
    [Fact]
    public void A_sentence_of_a_few_lines_stays_on_one_page()
    {
        var pages = PaperText.OfPages(ReportPdf.Write(Report()));
        Assert.True(pages.Count > 2, $"only {pages.Count} pages");
        Assert.All(pages.Skip(1), page => Assert.StartsWith("#", page, StringComparison.Ordinal));
    }

    /// <summary>A compressed stream ends with its Adler-32 (RFC 1950, 2.2), which PDFsharp leaves out.</summary>
    [Fact]
    public void No_stream_lacks_its_checksum()
    {
        var file = Encoding.Latin1.GetString(ReportPdf.Write(Report()));
        Assert.DoesNotContain("/FlateDecode", file, StringComparison.Ordinal);
    }

    private static MonthReport Report()
    {
        var words = string.Join(' ', Enumerable.Repeat("elongation", 25));
        return new MonthReport(
            new DateOnly(2026, 3, 1), "Mill", new PlantTime(A.Now, TimeZoneInfo.Utc),
            [new ReportPart("# In short", [.. Enumerable.Repeat($"# {words}", 60)])]);
    }
}
