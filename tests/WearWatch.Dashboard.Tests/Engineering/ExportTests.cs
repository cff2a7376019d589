
using WearWatch.Dashboard.Kit.Exports;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class ExportTests
{
    // RFC 4180, section 2: CRLF, fields with commas, quotes or line breaks in quotes, quotes doubled.
    [Fact]
    public void A_table_is_written_as_RFC_4180_says() => Assert.Equal(
        "a,b\r\n\"one, two\",\"say \"\"yes\"\"\"\r\n1.5,\r\n",
        CsvExport.Text(["a", "b"], [["one, two", "say \"yes\""], [1.5, double.NaN]]));

    [Fact]
    public void A_text_that_a_spreadsheet_would_run_is_disarmed() =>
        Assert.Equal("a\r\n'=1+1\r\n-2\r\n", CsvExport.Text(["a"], [["=1+1"], [-2.0]]));

    [Fact]
    public void Moments_are_written_as_ISO_8601_says() =>
        Assert.Equal("at\r\n2026-11-25T12:00:00+00:00\r\n", CsvExport.Text(["at"], [[A.Now]]));

    [Fact]
    public void A_picture_carries_its_light_colours_and_no_rule_of_the_page() => Assert.Equal(
        ".desk-chart{background:#fff;font-family:sans-serif}\n.desk-chart .grid { stroke: #ddd; }\n",
        PictureExport.Style(".app { --paper: #fff; --line: #ddd; }\n.app.dark { --paper: #000; --line: #333; }",
            ".desk-tabs { margin: 0; }\n.desk-chart .grid { stroke: var(--line); }\n"));
}
