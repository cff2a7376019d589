using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Tests.Gauging;

public sealed class MeasuredLengthTextTests
{
    [Theory]
    [InlineData("258.6 inside 282.4 outside", 270.5)] // the mean: docs/references.md [4]
    [InlineData("258.6 inside, 282.4 outside mm", 270.5)]
    [InlineData("270.5", 270.5)]
    [InlineData("10 3/16 inside 11 1/8 outside in", 270.66875)] // (10.1875 + 11.125)/2 in x 25.4 mm
    public void A_length_is_read_plain_or_from_inside_and_outside_of_the_rollers(string text, double mm) =>
        Assert.Equal(
            mm, Assert.IsType<LengthText.Understood>(MeasuredLengthText.Read(text, LengthUnit.Millimetre)).Length.Millimetres, 9);

    [Theory]
    [InlineData("282.4 inside 258.6 outside", "Over the rollers is more than between them")]
    [InlineData("258.6 inside 11 1/8 outside", "different units")]
    [InlineData("wide inside 282.4 outside", "not a length")]
    public void What_cannot_be_is_refused_with_its_reason(string text, string reason) =>
        Assert.Contains(reason, Assert.IsType<LengthText.NotUnderstood>(
            MeasuredLengthText.Read(text, LengthUnit.Millimetre)).Reason.ToString(), StringComparison.Ordinal);

    [Fact]
    public void What_is_kept_of_a_caliper_is_read_again() =>
        Assert.Equal(
            MeasuredLengthText.Read("258.6 inside 282.4 outside", LengthUnit.Millimetre),
            MeasuredLengthText.Read(MeasuredLengthText.OverRollers(" 258.6", "282.4 "), LengthUnit.Millimetre));
}
