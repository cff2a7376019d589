using WearWatch.Chains;
using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class MeasuringGuideTests
{
    public static TheoryData<ChainFamily> Families => [.. Enum.GetValues<ChainFamily>()];

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_kind_of_chain_is_told_where_and_how(ChainFamily family)
    {
        var steps = MeasuringGuide.For(family);
        Assert.True(steps.Count >= 3, string.Join(' ', steps));
        Assert.All(steps, step => Assert.EndsWith(".", step, StringComparison.Ordinal));
    }

    [Fact]
    public void Link_chain_is_measured_over_eleven_links() =>
        Assert.Contains(MeasuringGuide.For(ChainFamily.RoundLink), step => step.Contains($"{SpanProposal.RoundLinks} links", StringComparison.Ordinal));

    // One outer link does not grow from pin to pin: docs/gauging.md.
    [Theory]
    [InlineData(ChainFamily.Roller, true)]
    [InlineData(ChainFamily.OffsetLink, false)]
    public void An_even_number_is_asked_for_where_inner_and_outer_links_alternate(ChainFamily family, bool asked) =>
        Assert.Equal(asked, MeasuringGuide.For(family).Any(step => step.Contains("even number", StringComparison.Ordinal)));
}
