using System.Globalization;
using WearWatch.Dashboard.Engineer.Workbench;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;
using WearWatch.Units;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class UnitPreferenceTests
{
    private static readonly UnitPreference American =
        new(LengthUnit.Inch, Horsepower: true, FeetPerMinute: true, Fahrenheit: true);

    [Fact]
    public void A_preference_survives_its_cookie()
    {
        Assert.Equal(American, UnitPreference.FromCookie(American.ToCookie()));
        Assert.Equal(UnitPreference.Si, UnitPreference.FromCookie(UnitPreference.Si.ToCookie()));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("; drop.table")]
    public void What_a_cookie_does_not_name_is_SI(string? cookie) =>
        Assert.Equal(UnitPreference.Si, UnitPreference.FromCookie(cookie));

    // Exact by definition, docs/references.md [39]: 25.4 mm, 0.3048/60 m/s; 1 hp = 745.699872 W; 0 and 100 degrees Celsius.
    [Fact]
    public void Figures_stand_in_the_units_chosen()
    {
        Assert.Equal("24.1875 in", American.OfLength(614.3625));
        Assert.Equal("614.36 mm", UnitPreference.Si.OfLength(614.3625));
        Assert.Equal("40 hp", American.OfPower(40 * 745.699872));
        Assert.Equal("100 ft/min", American.OfSpeed(0.508));
        Assert.Equal("212 °F", American.OfTemperature(100));
        Assert.Equal("–", American.OfForce(null));
    }

    // Property: what a person types comes back as typed, through SI, for every mark of an inch rule and tenth of a degree.
    [Fact]
    public void What_a_person_types_comes_back_to_the_last_digit()
    {
        var length = FieldUnits.Millimetres(American);
        var temperature = FieldUnits.Celsius(American);
        for (var i = 1; i <= 6400; i++)
        {
            var inches = (i / 64.0).ToString("0.######", CultureInfo.InvariantCulture);
            Assert.Equal(inches, length.ToScreen(length.ToAddress(inches)));
            var fahrenheit = (i / 10.0 - 60).ToString("0.#", CultureInfo.InvariantCulture);
            Assert.Equal(fahrenheit, temperature.ToScreen(temperature.ToAddress(fahrenheit)));
        }
    }

    [Fact]
    public void A_plain_number_takes_the_persons_unit_with_it_and_one_with_a_unit_keeps_its_own()
    {
        var power = FieldUnits.Marked(QuantityKind.Power, American.PowerMark);
        Assert.Equal("40 hp", power.ToAddress("40"));
        Assert.Equal("30 kW", power.ToAddress("30 kW"));
        Assert.Equal("a lot", power.ToAddress("a lot"));
    }

    [Theory]
    [InlineData("30", 30_000)]
    [InlineData("30kw", 30_000)]
    [InlineData("0,5 MW", 500_000)]
    [InlineData("10 hp", 7456.99872)]
    [InlineData("750 W", 750)]
    public void Powers_are_read_with_their_unit(string text, double watts) =>
        Assert.Equal(watts, QuantityKind.Power.Read(text)!.Value, 1e-6);

    [Theory]
    [InlineData("-3 kW")]
    [InlineData("kW")]
    [InlineData("3 PS")]
    [InlineData("NaN")]
    public void What_is_no_power_is_not_read(string text) => Assert.Null(QuantityKind.Power.Read(text));

    [Fact]
    public void An_address_keeps_its_texts()
    {
        var address = BenchAddress.Of(new Uri("http://localhost/gauge?length=48%203%2F16&unit=in"));
        Assert.Equal("48 3/16", address.Text("length"));
        Assert.Equal(address, BenchAddress.Of(new Uri("http://localhost" + address.With("pitches", "24").With("pitches", " "))));
    }
}
