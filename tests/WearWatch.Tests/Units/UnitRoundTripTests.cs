using CsCheck;
using WearWatch.Units;

namespace WearWatch.Tests.Units;

public sealed class UnitRoundTripTests
{
    [Fact]
    public void Every_mark_of_an_inch_rule_reads_back_as_itself() =>
        Gen.Select(Gen.Int[0, 300], Gen.Int[0, 63]).Where(t => t.Item1 + t.Item2 > 0).Sample((whole, parts) =>
        {
            var mark = InchFraction.Nearest(Length.FromInches(whole + parts / 64.0));
            var read = Assert.IsType<LengthText.Understood>(LengthText.Read(mark.ToString(), LengthUnit.Millimetre));
            return InchFraction.Nearest(read.Length) == mark && read.WrittenIn == LengthUnit.Inch;
        });

    // A length with two decimals of a millimetre or four of an inch must come back to the last digit shown.
    [Theory]
    [InlineData(LengthUnit.Millimetre, 100)]
    [InlineData(LengthUnit.Inch, 10_000)]
    public void A_length_shown_and_read_again_is_the_same_to_the_last_digit_shown(LengthUnit unit, int parts) =>
        Gen.Int[1, 200_000].Sample(n =>
        {
            var shown = Length.Of((double)n / parts, unit).ToText(unit);
            var read = Assert.IsType<LengthText.Understood>(LengthText.Read(shown, LengthUnit.Millimetre));
            return read.Length.ToText(unit) == shown && Math.Abs(read.Length.In(unit) - (double)n / parts) < 1e-9;
        });

    [Fact]
    public void Power_speed_force_and_temperature_come_back_to_twelve_digits() =>
        Gen.Double[0.001, 100_000].Sample(x =>
            Close(x, Power.FromHorsepower(x).Horsepower)
            && Close(x, Power.FromKilowatts(x).Kilowatts)
            && Close(x, Speed.FromFeetPerMinute(x).FeetPerMinute)
            && Close(x, Speed.FromMetresPerHour(x).MetresPerHour)
            && Close(x, Force.FromPounds(x).Pounds)
            && Math.Abs(Temperature.FromFahrenheit(x).Fahrenheit - x) < 1e-9);

    // Oracle: 0.3048 m a foot, 0.45359237 kg a pound, 9.80665 m/s2: exact by definition; 212 degF boils water.
    [Fact]
    public void Units_are_those_of_the_definitions()
    {
        Assert.Equal(0.00508, Speed.FromFeetPerMinute(1).MetresPerSecond, 1e-15);
        Assert.Equal(4.4482216152605, Force.FromPounds(1).Newtons);
        Assert.Equal(100, Temperature.FromFahrenheit(212).Celsius, 1e-12);
        // Source: docs/references.md [39], 1 hp = 550 ft lbf/s.
        Assert.Equal(550 * 0.3048 * 4.4482216152605, Power.WattsPerHorsepower, 1e-6);
    }

    [Theory]
    [InlineData(19.05, 64, "3/4\"")]
    [InlineData(25.4, 16, "1\"")]
    [InlineData(1223.9625, 16, "48 3/16\"")]
    [InlineData(1224.0, 64, "48 3/16\"")]
    [InlineData(25.3, 16, "1\"")]
    public void A_length_is_shown_as_the_nearest_mark_in_lowest_terms(double millimetres, int graduation, string text) =>
        Assert.Equal(text, InchFraction.Nearest(new Length(millimetres), graduation).ToString());

    [Fact]
    public void A_graduation_that_no_rule_has_is_a_callers_mistake() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => InchFraction.Nearest(new Length(10), 10));

    private static bool Close(double expected, double actual) => Math.Abs(actual - expected) <= 1e-12 * expected;
}
