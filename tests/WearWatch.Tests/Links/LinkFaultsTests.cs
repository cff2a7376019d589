using WearWatch.Gauging;
using WearWatch.Links;

namespace WearWatch.Tests.Links;

public sealed class LinkFaultsTests
{
    public static TheoryData<MeasuredLinks, string> Impossible => new()
    {
        { new() { }, "OneLinkMm" },
        { new() { OneLinkMm = 1.52 }, "OneLinkMm" }, // the decimal point slipped
        { new() { OneLinkMm = 152 }, "OneLinkMm" },
        { new() { SeveralLinksMm = 167, Links = 5 }, "Links" },
        { new() { SeveralLinksMm = 76 }, "SeveralLinksMm" }, // five links in place of eleven
        { new() { SeveralLinksMm = 167, Tool = Tool.Sensor }, "Tool" },
        { new() { D1Mm = 0.48 }, "D1Mm" },
        { new() { D2Mm = 5.7 }, "D2Mm" },
        { new() { D1Mm = double.NaN }, "D1Mm" },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_no_link_has_is_refused_by_its_field(MeasuredLinks told, string field) =>
        Assert.Equal(field, Assert.Single(LinkFaults.Of(told, LinkVerdictTests.FiveByFifteen)).Field);

    // A link worn to two thirds or pulled by a fifth is bad, and possible: refusing it would hide it.
    [Fact]
    public void A_bad_link_is_never_refused() => Assert.Empty(LinkFaults.Of(
        new() { OneLinkMm = 18, SeveralLinksMm = 190, Links = 11, D1Mm = 3.3, D2Mm = 4.6 }, LinkVerdictTests.FiveByFifteen));
}
