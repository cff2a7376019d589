using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class LinkWearTests
{
    // By hand: mean of 17.1 and 17.3 is 17.2; 100 (18 - 17.2)/18 = 4.4444 %.
    [Fact]
    public void A_link_is_worn_by_the_mean_of_two_diameters()
    {
        var link = LinkWear.Of(18, [17.1, 17.3]);
        Assert.Equal(4.4444, link.Percent, 4);
        Assert.False(link.IsDiscarded);
        Assert.Contains("from memory", link.Verdict, StringComparison.Ordinal); // the discard figure was recalled, and says so
    }

    [Theory]
    [InlineData(16.21, false)]
    [InlineData(16.2, true)]
    public void A_link_is_discarded_from_a_tenth_of_its_diameter_on(double measured, bool discarded) =>
        Assert.Equal(discarded, LinkWear.Of(18, [measured]).IsDiscarded);

    [Theory]
    [InlineData(18, 0, "0 mm is no diameter of a link of 18 mm.")]
    [InlineData(18, 22, "22 mm is no diameter of a link of 18 mm.")]
    [InlineData(18, double.NaN, "NaN mm is no diameter of a link of 18 mm.")]
    [InlineData(0, 17, "A link's diameter lies above 0 and at most at 500 mm.")]
    [InlineData(double.NaN, 17, "A link's diameter lies above 0 and at most at 500 mm.")]
    public void Diameters_of_no_link_are_told_why(double fresh, double measured, string told)
    {
        Assert.Equal(told, LinkWear.Fault(fresh, [measured]));
        Assert.StartsWith(
            told, Assert.Throws<ArgumentException>(() => LinkWear.Of(fresh, [measured])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_diameter_is_told_to_measure_one() =>
        Assert.Equal("Measure at least one diameter; two, at right angles, are better.", LinkWear.Fault(18, []));
}
