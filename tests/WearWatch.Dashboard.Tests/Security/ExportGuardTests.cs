using WearWatch.Dashboard.Kit.Exports;

namespace WearWatch.Dashboard.Tests.Security;

public sealed class ExportGuardTests
{
    // OWASP, CSV Injection: texts that begin with = + - @, a tab or a carriage return; their full-width forms as well.
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@x")]
    [InlineData("\t=1+1")]
    [InlineData("\r=1+1")]
    [InlineData(" =1+1")]
    [InlineData("\uFF1D1+1")]
    public void A_text_that_a_spreadsheet_would_run_is_made_a_text(string text) =>
        Assert.StartsWith("'", CsvExport.Text(["a"], [[text]]).Split("\r\n")[1].TrimStart('"'), StringComparison.Ordinal);

    [Fact]
    public void A_negative_number_stays_a_number() => Assert.Equal("a\r\n-1.5\r\n", CsvExport.Text(["a"], [[-1.5]]));
}
