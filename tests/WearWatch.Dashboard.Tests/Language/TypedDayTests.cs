using WearWatch.Dashboard.Kit.Language;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>
/// A day is read as its language writes it, by its month's name and by ISO 8601; what can mean two days is not.
/// </summary>
public sealed class TypedDayTests
{
    [Theory]
    [InlineData("en", "4 Mar 2026")]
    [InlineData("en", "4 March 2026")]
    [InlineData("en", " 2026-03-04 ")]
    [InlineData("de", "4.3.2026")]
    [InlineData("de", "04.03.2026")]
    [InlineData("de", "4. M\u00E4rz 2026")]
    [InlineData("de", "2026-03-04")]
    [InlineData("es", "4/3/2026")]
    [InlineData("es", "4 marzo 2026")]
    [InlineData("es", "4 mar. 2026")]
    public void A_day_is_read_in_the_forms_of_its_language(string code, string text) =>
        Assert.Equal(new DateOnly(2026, 3, 4), InLanguage.Of(code, () => TypedDay.Of(text)));

    [Theory]
    [InlineData("en", "3/4/2026")]
    [InlineData("de", "31.2.2026")]
    [InlineData("de", "4.3.26")]
    [InlineData("es", "2026-13-01")]
    [InlineData("en", "tomorrow")]
    [InlineData("en", "")]
    public void What_is_no_day_is_not_guessed(string code, string text) =>
        Assert.Null(InLanguage.Of(code, () => TypedDay.Of(text)));

    [Fact]
    public void What_stands_in_a_field_reads_back_in_every_language()
    {
        foreach (var tongue in Tongue.All)
        {
            for (var day = new DateOnly(2026, 1, 1); day.Year == 2026; day = day.AddDays(1))
                Assert.Equal(day, InLanguage.Of(tongue.Code, () => TypedDay.Of(TypedDay.Text(day))));
        }
    }
}
