using WearWatch.Units;

namespace WearWatch.Tests.Units;

public sealed class LengthTextTests
{
    // Oracle: one inch is exactly 25.4 mm; the products were written out by hand: 48.1875 x 25.4 = 1223.9625.
    [Theory]
    [InlineData("609.6", LengthUnit.Millimetre, 609.6, LengthUnit.Millimetre)]
    [InlineData("  609,6 ", LengthUnit.Millimetre, 609.6, LengthUnit.Millimetre)]
    [InlineData("609.6 mm", LengthUnit.Inch, 609.6, LengthUnit.Millimetre)]
    [InlineData("60.96cm", LengthUnit.Millimetre, 609.6, LengthUnit.Millimetre)]
    [InlineData("1.219 m", LengthUnit.Millimetre, 1219.0, LengthUnit.Millimetre)]
    [InlineData("24.75 in", LengthUnit.Millimetre, 628.65, LengthUnit.Inch)]
    [InlineData("24.75", LengthUnit.Inch, 628.65, LengthUnit.Inch)]
    [InlineData("24.75\"", LengthUnit.Millimetre, 628.65, LengthUnit.Inch)]
    [InlineData("48 3/16", LengthUnit.Millimetre, 1223.9625, LengthUnit.Inch)]
    [InlineData("48 3/16\"", LengthUnit.Millimetre, 1223.9625, LengthUnit.Inch)]
    [InlineData("48-3/16 in.", LengthUnit.Inch, 1223.9625, LengthUnit.Inch)]
    [InlineData("3/4", LengthUnit.Inch, 19.05, LengthUnit.Inch)]
    [InlineData("12 1/16 inch", LengthUnit.Millimetre, 306.3875, LengthUnit.Inch)]
    [InlineData(".5 in", LengthUnit.Millimetre, 12.7, LengthUnit.Inch)]
    public void A_length_is_read_as_it_stands_on_a_tape(string text, LengthUnit expected, double millimetres,
        LengthUnit writtenIn) =>
        Assert.Equal(new LengthText.Understood(new Length(millimetres), writtenIn), LengthText.Read(text, expected));

    [Theory]
    [InlineData("", "wanted")]
    [InlineData("about 600", "not a length")]
    [InlineData("-5", "not a length")]
    [InlineData("1,219", "two ways")]
    [InlineData("48 3/17", "on no inch rule")]
    [InlineData("48 3/1", "on no inch rule")]
    [InlineData("48 17/16", "the smaller one")]
    [InlineData("48 3/16 mm", "fractions are for inches")]
    [InlineData("48.5 3/16", "one of them")]
    [InlineData("0", "above zero")]
    [InlineData("1e3", "not a length")]
    [InlineData("99999999", "is the unit right")]
    [InlineData("123456789012345678901234567890123456789", "more digits")]
    [InlineData("609.6 609.6", "not a length")]
    [InlineData("1.219.0", "not a length")]
    public void Text_that_is_no_length_is_refused_with_a_reason(string text, string reason) =>
        Assert.Contains(reason, Assert.IsType<LengthText.NotUnderstood>(LengthText.Read(text,
            LengthUnit.Millimetre)).Reason.ToString(),
            StringComparison.Ordinal);
}
