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
        var words = string.Join(' ', Enumerable.Repeat("elongation", 25));
        var report = new MonthReport(
            new DateOnly(2026, 3, 1), "Mill", new PlantTime(A.Now, TimeZoneInfo.Utc),
            [new ReportPart("# In short", [.. Enumerable.Repeat($"# {words}", 60)])]);
        var pages = PaperText.OfPages(ReportPdf.Write(report));
        Assert.True(pages.Count > 2, $"only {pages.Count} pages");
        Assert.All(pages.Skip(1), page => Assert.StartsWith("#", page, StringComparison.Ordinal));
    }
}
