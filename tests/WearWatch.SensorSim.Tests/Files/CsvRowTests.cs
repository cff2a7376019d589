using WearWatch.SensorSim.Files;

namespace WearWatch.SensorSim.Tests.Files;

public sealed class CsvRowTests
{
    // Oracle: RFC 4180, section 2, rules 1, 5, 6 and 7.
    [Fact]
    public void Cells_with_commas_quotes_or_line_ends_are_quoted()
    {
        using var writer = new StringWriter();
        CsvText.Write(writer, "plain", "a,b", "5\" tape", "two\r\nlines", "");

        Assert.Equal("plain,\"a,b\",\"5\"\" tape\",\"two\r\nlines\",\r\n", writer.ToString());
    }

    [Theory]
    [InlineData(12.0, "12")]
    [InlineData(12.25, "12.25")]
    [InlineData(0.126, "0.13")]
    [InlineData(-0.5, "-0.5")]
    public void Numbers_have_a_point_and_no_needless_zeros(double value, string text) =>
        Assert.Equal(text, CsvText.Number(value, 2));

    [Fact]
    public void What_is_not_known_is_empty()
    {
        Assert.Equal("", CsvText.Number(null, 2));
        Assert.Equal("", CsvText.Moment(null));
    }

    [Fact]
    public void A_moment_carries_the_offset_of_its_zone() => Assert.Equal(
        "2026-03-29T03:05:00+02:00", CsvText.Moment(new DateTimeOffset(2026, 3, 29, 3, 5, 0, TimeSpan.FromHours(2))));
}
