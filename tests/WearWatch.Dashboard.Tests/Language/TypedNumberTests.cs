using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Technician.Entry;
using WearWatch.Units;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>A number is read with a decimal comma or point in every language, and never guessed.</summary>
public sealed class TypedNumberTests
{
    [Theory]
    [InlineData("1234,5", 1234.5)]
    [InlineData("1234.5", 1234.5)]
    [InlineData(" 1234,5 ", 1234.5)]
    [InlineData("1.234,5", 1234.5)]
    [InlineData("1,234.5", 1234.5)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1,234,567", 1234567)]
    [InlineData("12 400,25", 12400.25)]
    [InlineData("12400", 12400)]
    [InlineData("0,125", 0.125)]
    [InlineData("0.125", 0.125)]
    [InlineData("-3,5", -3.5)]
    [InlineData(",5", 0.5)]
    [InlineData("7,", 7)]
    [InlineData("1234,567", 1234.567)]
    [InlineData("1234.567", 1234.567)]
    [InlineData("1,25", 1.25)]
    public void What_can_mean_one_number_is_that_number_in_every_language(string text, double number)
    {
        foreach (var tongue in Tongue.All) Assert.Equal(number, InLanguage.Of(tongue.Code, () => TypedNumber.Of(text)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("1.2.3")]
    [InlineData("1,2,3")]
    [InlineData("1.234,5,6")]
    [InlineData("12.34,5")]
    [InlineData("1e5")]
    [InlineData("--1")]
    [InlineData("5 3")]
    [InlineData("Infinity")]
    public void What_is_no_number_is_none(string text)
    {
        foreach (var tongue in Tongue.All)
            Assert.IsType<TypedNumber.NotANumber>(InLanguage.Of(tongue.Code, () => TypedNumber.Read(text)));
    }

    [Theory]
    [InlineData("en", "1,234", "'1,234' can mean 1.234 or 1234: write the one you mean.")]
    [InlineData("de", "1.234", "'1.234' kann 1,234 oder 1234 heißen: das Gemeinte schreiben.")]
    [InlineData("es", "12.400", "'12.400' puede ser 12,400 o 12400: escribir lo que se quiere decir.")]
    public void What_can_mean_two_numbers_is_asked_about(string code, string text, string question)
    {
        Assert.Null(InLanguage.Of(code, () => TypedNumber.Of(text)));
        Assert.Equal(question, InLanguage.Of(code, () => TypedNumber.Fault(text, $"A number.")));
    }

    [Theory]
    [InlineData("en", "1.234")]
    [InlineData("de", "1,234")]
    [InlineData("es", "1,234")]
    public void A_language_s_own_decimal_sign_stands_before_decimals(string code, string text) =>
        Assert.Equal(1.234, InLanguage.Of(code, () => TypedNumber.Of(text)));

    [Theory]
    [InlineData("1234,5 mm", "1234.5 mm")]
    [InlineData("48 3/16", "48 3/16")]
    [InlineData("258,6 inside 282,4 outside mm", "258.6 inside 282.4 outside mm")]
    public void A_length_is_kept_with_decimal_points(string typed, string kept) =>
        Assert.Equal(kept, InLanguage.Of("de", () => TypedNumber.WithPoints(typed, out _)));

    [Fact]
    public void What_a_field_shows_reads_back_as_it_is()
    {
        var chance = new Random(7);
        for (var i = 0; i < 2000; i++)
        {
            var number = Math.Round(Math.Pow(10, 6 * chance.NextDouble() - 2), 6);
            foreach (var tongue in Tongue.All)
                Assert.Equal(number, InLanguage.Of(tongue.Code, () => TypedNumber.Of(TypedNumber.Text(number))));
        }
    }

    [Fact]
    public void A_german_length_is_understood_and_sent_with_a_point()
    {
        var form = new EntryForm { Length = "1234,5", Pitches = "48", Unit = LengthUnit.Millimetre };
        Assert.Equal("1234.5", InLanguage.Of("de", () => form.PlainLength));
    }
}
