using WearWatch.Chains.Links;

namespace WearWatch.Tests.Chains.Links;

public sealed class LinkTableTests
{
    private static LinkTableEntry Told { get; } = new() { DiameterMm = 5, Source = "a hoist maker's manual" };

    // Five rows of one hoist maker's limit tables "acc. DIN 685-5" (docs/references.md [74]): d, p, L1, L11, dm.
    public static TheoryData<double, double, double, double, double> PublishedRows => new()
    {
        { 5, 15, 15.7, 170.6, 4.5 }, { 8, 24, 25.3, 272.1, 7.2 }, { 9, 27, 28.1, 300.8, 8.2 }, { 13, 36, 37.9, 408.3, 11.9 },
        { 16, 45, 47.4, 505.6, 14.4 },
    };

    [Theory]
    [MemberData(nameof(PublishedRows))]
    public void A_makers_published_row_is_taken_as_it_stands(double d, double p, double one, double eleven, double mean)
    {
        var told = new LinkTableEntry
        {
            DiameterMm = d,
            OneLinkLimitMm = one,
            SeveralLinksLimitMm = eleven,
            DiameterLimitMm = mean,
            Source = "a hoist maker's manual",
        };
        Assert.Empty(LinkTableCheck.Faults(told, p));
        var table = LinkTable.Of(told, p);
        Assert.Equal((one, eleven, mean, 11),
            (table.OneLinkLimitMm, table.SeveralLinksLimitMm, table.DiameterLimitMm, table.Links));
        Assert.Equal(11 * p, table.NominalSeveralMm, 9);
    }

    // Both were met in makers' papers: dm 21.2 for a chain of 5 mm, and 5.9 mm printed beside 0.239 in (which is 6.07 mm).
    [Fact]
    public void A_diameter_limit_thicker_than_the_chain_is_refused_as_a_misprint()
    {
        var fault = Assert.Single(LinkTableCheck.Faults(Told with { DiameterLimitMm = 21.2 }, 15));
        Assert.Equal("DiameterLimitMm", fault.Field);
        Assert.StartsWith("21.2 mm is 4.240 of the 5 mm when new; makers' limits lie between 0.80 and 0.95.",
            fault.Reason.ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Two_units_that_disagree_are_refused_with_the_figures()
    {
        var fault = Assert.Single(LinkTableCheck.Faults(
            new() { DiameterMm = 7, DiameterLimitMm = 5.9, DiameterLimitInches = 0.239, Source = "a sling maker" }, 21));
        Assert.Equal("DiameterLimitInches", fault.Field);
        Assert.StartsWith("0.239 in are 6.07 mm, not 5.9 mm", fault.Reason.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3.99, true)]
    [InlineData(4.0, false)]
    [InlineData(4.75, false)]
    [InlineData(4.76, true)]
    public void A_diameter_limit_lies_between_080_and_095_of_nominal(double limit, bool refused) =>
        Assert.Equal(refused, LinkTableCheck.Faults(Told with { DiameterLimitMm = limit }, 15).Count > 0);

    [Theory]
    [InlineData(15.14, true)]
    [InlineData(15.15, false)]
    [InlineData(16.8, false)]
    [InlineData(16.81, true)]
    public void A_length_limit_lies_between_101_and_112_of_new(double limit, bool refused) =>
        Assert.Equal(refused, LinkTableCheck.Faults(Told with { OneLinkLimitMm = limit }, 15).Count > 0);

    // 11 links of 5x15 over outer edges: 165 + 2 x 5 = 175 mm. A limit of 170.6 is one over inner edges.
    [Fact]
    public void An_inner_length_entered_as_outer_is_refused()
    {
        var outer = Told with { OuterEdges = true };
        Assert.Contains("outer", Assert.Single(LinkTableCheck.Faults(outer with { SeveralLinksLimitMm = 170.6 },
            15)).Reason.ToString(),
            StringComparison.Ordinal);
        Assert.Empty(LinkTableCheck.Faults(outer with { SeveralLinksLimitMm = 180.6 }, 15));
    }

    [Fact]
    public void A_limit_without_its_source_is_refused() =>
        Assert.Equal("Source", Assert.Single(LinkTableCheck.Faults(Told with { DiameterLimitMm = 4.5, Source = " " }, 15)).Field);

    [Theory]
    [InlineData(null, 15, "DiameterMm")]
    [InlineData(5.0, 5, "DiameterMm")] // a pitch of one diameter: the neighbour would not fit in
    [InlineData(500.0, 1500, "DiameterMm")]
    public void A_size_that_no_link_has_is_refused(double? d, double p, string field) =>
        Assert.Equal(field, Assert.Single(LinkTableCheck.Faults(new() { DiameterMm = d }, p)).Field);

    [Fact]
    public void A_table_with_a_fault_is_no_table() =>
        Assert.Throws<ArgumentException>(() => LinkTable.Of(Told with { DiameterLimitMm = 21.2 }, 15));
}
