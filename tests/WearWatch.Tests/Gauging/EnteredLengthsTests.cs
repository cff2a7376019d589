using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Tests.Gauging;

public sealed class EnteredLengthsTests
{
    [Theory]
    [InlineData("1219.4", LengthUnit.Millimetre, 1219.4)]
    [InlineData("1219.4; 1219.6", LengthUnit.Millimetre, 1219.5)]
    [InlineData("48 3/16", LengthUnit.Inch, 1223.9625)]
    [InlineData("48 1/16; 48 3/16", LengthUnit.Inch, 1222.375)]
    [InlineData("1210.2 inside 1226.2 outside", LengthUnit.Millimetre, 1218.2)]
    [InlineData("1210.2 inside 1226.2 outside; 1210.4 inside 1226.4 outside", LengthUnit.Millimetre, 1218.3)]
    public void The_mean_of_what_was_told_counts(string text, LengthUnit unit, double meanMm)
    {
        var told = Assert.IsType<EnteredLengths.Understood>(EnteredLengths.Read(text, unit));
        Assert.Equal(meanMm, told.MeanMm, 1e-9); // by hand; a sum of a few decimals is exact to far better
    }

    [Theory]
    [InlineData("1219.4; tape", "'tape' is not a length")]
    [InlineData("1219.4;", "A length is wanted")]
    [InlineData("1226.2 inside 1210.2 outside", "Over the rollers is more than between them")]
    [InlineData("1;2;3;4;5;6", "More than 5 lengths")]
    public void Text_that_is_no_length_says_what_is_wrong(string text, string reason) =>
        Assert.StartsWith(
            reason, Assert.IsType<EnteredLengths.NotUnderstood>(EnteredLengths.Read(text,
                LengthUnit.Millimetre)).Reason.ToString(),
            StringComparison.Ordinal);
}
