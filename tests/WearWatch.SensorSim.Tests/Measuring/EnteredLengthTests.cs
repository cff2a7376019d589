using WearWatch.SensorSim.Measuring;

namespace WearWatch.SensorSim.Tests.Measuring;

public sealed class EnteredLengthTests
{
    [Theory]
    [InlineData(612.3, "612.5")]
    [InlineData(612.2, "612.0")]
    public void A_metric_tape_is_read_to_half_a_millimetre(double lengthMm, string text) =>
        Assert.Equal(new EnteredLength(text, "mm"), EnteredLength.Of(lengthMm, Tool.Tape, inInches: false));

    // Oracle: an inch is 25.4 mm exactly (international yard and pound agreement, 1959).
    [Theory]
    [InlineData(25.4 * 48, "48")]
    [InlineData(25.4 * 48.1875, "48 3/16")]
    [InlineData(25.4 * 48.5, "48 1/2")]
    [InlineData(25.4 * 0.75, "3/4")]
    [InlineData(25.4 * 47.99, "48")]
    public void An_inch_tape_is_read_to_a_sixteenth(double lengthMm, string text) =>
        Assert.Equal(new EnteredLength(text, "in"), EnteredLength.Of(lengthMm, Tool.Tape, inInches: true));

    [Fact]
    public void A_caliper_shows_hundredths_of_a_millimetre_or_thousandths_of_an_inch()
    {
        Assert.Equal("306.12", EnteredLength.Of(306.1234, Tool.Caliper, inInches: false).Text);
        Assert.Equal("12.050", EnteredLength.Of(12.05 * 25.4, Tool.Caliper, inInches: true).Text);
    }

    [Fact]
    public void Slips_of_the_pen_change_the_text_as_they_say()
    {
        var told = new EnteredLength("1612.5", "mm");

        Assert.Equal("161.25", told.WithSlippedPoint().Text);
        Assert.Equal("1621.5", told.WithSwappedDigits().Text);
        Assert.Equal("84 3/16", new EnteredLength("48 3/16", "in").WithSwappedDigits().Text);
    }

    [Fact]
    public void Where_there_is_no_room_for_a_slip_the_text_stays()
    {
        Assert.Equal("48", new EnteredLength("48", "in").WithSlippedPoint().Text);
        Assert.Equal("66.5", new EnteredLength("66.5", "mm").WithSwappedDigits().Text);
    }
}
