using WearWatch.Units;

namespace WearWatch.Tests.Units;

public sealed class LengthTests
{
    [Theory]
    [InlineData(609.6, LengthUnit.Millimetre, "609.6 mm")]
    [InlineData(609.6, LengthUnit.Inch, "24 in")]
    [InlineData(1223.9625, LengthUnit.Inch, "48.1875 in")]
    [InlineData(1223.9625, LengthUnit.Millimetre, "1223.96 mm")]
    [InlineData(0.004, LengthUnit.Millimetre, "0 mm")]
    public void A_length_is_written_with_its_unit(double millimetres, LengthUnit unit, string text) =>
        Assert.Equal(text, new Length(millimetres).ToText(unit));

    [Fact]
    public void Lengths_and_speeds_compare_as_the_figures_do()
    {
        Assert.True(Length.FromInches(1) > new Length(25) && Length.FromInches(1) <= new Length(25.4));
        Assert.True(new Length(25) < Length.FromInches(1) && new Length(26) >= Length.FromInches(1));
        Assert.Equal([new Length(1), new Length(2), new Length(3)],
            new[] { new Length(3), new Length(1), new Length(2) }.Order());
        Assert.True(Speed.FromFeetPerMinute(200) > new Speed(1) && Speed.FromFeetPerMinute(100) < new Speed(1));
        Assert.True(new Speed(1) >= new Speed(1) && new Speed(1) <= new Speed(1));
        Assert.Equal(1, new Speed(2).CompareTo(new Speed(1)));
    }

    [Fact]
    public void A_number_in_a_unit_is_a_length_and_back() =>
        Assert.Equal(24.75, Length.Of(24.75, LengthUnit.Inch).In(LengthUnit.Inch), 1e-12);

    [Fact]
    public void A_mark_on_a_rule_is_a_length() => Assert.Equal(new Length(1223.9625), new InchFraction(48, 3, 16).Length);
}
