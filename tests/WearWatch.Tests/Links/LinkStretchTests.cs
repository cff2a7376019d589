using WearWatch.Links;
using WearWatch.Wear;

namespace WearWatch.Tests.Links;

/// <summary>Wear of the crowns lengthens a link by 2 (d - d1)/p; by hand for 5x15.</summary>
public sealed class LinkStretchTests
{
    // d1 4.8: 2 x 0.2/15 = 2.667 %; 11 links longer by 4.4 mm of 165 = 2.667 %: wear explains all of it.
    [Fact]
    public void A_length_that_the_crowns_explain_is_wear()
    {
        var stretch = LinkStretch.Of(new() { D1Mm = 4.8, SeveralLinksMm = 169.4 }, LinkVerdictTests.FiveByFifteen)!;
        Assert.Equal(2.6667, stretch.WearPercent, 4);
        Assert.Equal(2.6667, stretch.GrowthPercent, 4);
        Assert.False(stretch.IsOverload);
    }

    // Crowns as new, 3 % longer all the same: nothing wore, so it was pulled.
    [Fact]
    public void A_length_beyond_the_crowns_wear_is_stretch_by_overload_and_stops_the_chain()
    {
        var visit = new MeasuredLinks { D1Mm = 5.0, D2Mm = 5.0, SeveralLinksMm = 169.0 };
        var stretch = LinkStretch.Of(visit, LinkVerdictTests.FiveByFifteen)!;
        Assert.Equal(2.4242, stretch.GrowthPercent, 4);
        Assert.True(stretch.IsOverload);
        var verdict = LinkVerdict.Of(visit, LinkVerdictTests.FiveByFifteen, LinkVerdictTests.Limits);
        Assert.Equal(Condition.PlanASwap, verdict.Worst!.Condition);
        Assert.Equal(Condition.SwapNow, verdict.Condition);
        Assert.Contains("overloaded. Out of use until a competent person has examined it", verdict.Sentence.ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_link_stretched_alone_is_found() => Assert.True(
        LinkStretch.Of(new() { D1Mm = 4.95, OneLinkMm = 15.65, SeveralLinksMm = 165.7 },
            LinkVerdictTests.FiveByFifteen)!.IsOverload);

    [Fact]
    public void A_link_thicker_than_nominal_takes_nothing_from_the_length() =>
        Assert.Equal(0, LinkStretch.Of(new() { D1Mm = 5.1, OneLinkMm = 15 }, LinkVerdictTests.FiveByFifteen)!.WearPercent);

    [Theory]
    [InlineData(null, 169.0)]
    [InlineData(4.8, null)]
    public void Without_d1_or_a_length_nothing_is_said(double? d1, double? several) =>
        Assert.Null(LinkStretch.Of(new() { D1Mm = d1, SeveralLinksMm = several }, LinkVerdictTests.FiveByFifteen));
}
