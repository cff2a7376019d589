using WearWatch.Chains.Families;

namespace WearWatch.Tests.Gauging;

public sealed class MeasuringStepsTests
{
    public static TheoryData<string> Families => [.. ChainFamily.All.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_kind_of_chain_is_told_where_and_how(string family)
    {
        var steps = ChainFamily.Named(family).MeasuringSteps;
        Assert.True(steps.Count >= 3, string.Join(' ', steps));
        Assert.All(steps, step => Assert.EndsWith(".", step.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public void Link_chain_is_measured_over_eleven_links() =>
        Assert.Contains(
            ChainFamily.Named("round_link").MeasuringSteps, step => step.ToString().Contains("11 links",
                StringComparison.Ordinal));

    // One outer link does not grow from pin to pin: docs/gauging.md.
    [Theory]
    [InlineData("roller", true)]
    [InlineData("offset_link", false)]
    public void An_even_number_is_asked_for_where_inner_and_outer_links_alternate(string family, bool asked) =>
        Assert.Equal(
            asked, ChainFamily.Named(family).MeasuringSteps.Any(step => step.ToString().Contains("even number",
                StringComparison.Ordinal)));
}
