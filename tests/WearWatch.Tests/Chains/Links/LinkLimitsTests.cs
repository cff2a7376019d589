using WearWatch.Chains;
using WearWatch.Chains.Links;

namespace WearWatch.Tests.Chains.Links;

public sealed class LinkLimitsTests
{
    // Sources: docs/references.md [81] for Germany, [84] for the United States; where nobody has said, the stricter one.
    [Theory]
    [InlineData(LawRegion.Germany, 5)]
    [InlineData(LawRegion.UnitedStates, 3)]
    [InlineData(LawRegion.NotSet, 3)]
    public void A_sling_is_longer_by_no_more_than_its_region_lets_it(LawRegion region, double percent) =>
        Assert.All([LinkMeasure.OneLink, LinkMeasure.SeveralLinks], measure =>
        {
            var table = Table(10, 30, LinkUse.Sling);
            Assert.Equal((1 + percent / 100) * table.NewMm(measure), Mm(table, measure, region)!.Value, 1e-9);
        });

    private static LinkTable Table(
        double d = 5, double p = 15, LinkUse? use = LinkUse.PoweredHoist, double? one = null, double? several = null,
        double? mean = null, double? unused = null) => LinkTable.Of(new()
        {
            DiameterMm = d,
            Use = use,
            OneLinkLimitMm = one,
            SeveralLinksLimitMm = several,
            DiameterLimitMm = mean,
            UnusedSeveralLinksMm = unused,
            Source = "a maker",
        }, p);

    private static double? Mm(LinkTable table, LinkMeasure measure, LawRegion region) =>
        LinkLimits.For(table, holdsLoad: true, region).Of(measure)?.Mm;

    // DOE-STD-1090-96, only if the maker gives no figure: 1.5 % powered, 2.5 % hand-operated. By hand: 165 x 1.015 and x 1.025.
    // Germany, typical of 22 table rows: 3 % over 11 links, 165 x 1.03.
    [Theory]
    [InlineData(LinkUse.PoweredHoist, LawRegion.UnitedStates, 167.475)]
    [InlineData(LinkUse.HandHoist, LawRegion.UnitedStates, 169.125)]
    [InlineData(LinkUse.PoweredHoist, LawRegion.Germany, 169.95)]
    [InlineData(LinkUse.HandHoist, LawRegion.NotSet, 169.125)] // the stricter of the two
    public void Without_a_makers_table_the_regions_general_length_holds(LinkUse use, LawRegion region, double mm) =>
        Assert.Equal(mm, Mm(Table(use: use), LinkMeasure.SeveralLinks, region)!.Value, 9);

    [Fact]
    public void A_chain_of_unknown_use_is_taken_as_the_strictest() =>
        Assert.Equal(167.475, Mm(Table(use: null), LinkMeasure.SeveralLinks, LawRegion.NotSet)!.Value, 9);

    [Fact]
    public void An_american_general_length_counts_from_an_unworn_stretch_of_the_same_chain() =>
        Assert.Equal(1.015 * 165.5, Mm(Table(unused: 165.5), LinkMeasure.SeveralLinks, LawRegion.UnitedStates)!.Value, 9);

    [Fact]
    public void General_values_are_shown_as_general_with_source_and_certainty()
    {
        var limits = LinkLimits.For(Table(), holdsLoad: true, LawRegion.Germany);
        Assert.All(limits.All, limit => Assert.True(limit.IsGeneral));
        Assert.Contains("general value", limits.Of(LinkMeasure.MeanDiameter)!.Basis.ToString(), StringComparison.Ordinal);
        Assert.Contains("typical of 22 table rows", limits.Of(LinkMeasure.OneLink)!.Basis.ToString(), StringComparison.Ordinal);
        Assert.Contains(limits.Remarks, r => r.ToString().Contains("enter the maker's", StringComparison.Ordinal));
    }

    // 9x27 of the published table: L11 300.8 mm (1.3 %), stricter than any general value; L1 28.1; dm 8.2 (0.911 d) before 0.9 d.
    [Fact]
    public void The_makers_table_goes_before_general_values()
    {
        var limits = LinkLimits.For(Table(9, 27, one: 28.1, several: 300.8, mean: 8.2), holdsLoad: true, LawRegion.NotSet);
        Assert.Equal([28.1, 300.8, 8.2], limits.All.Select(l => l.Mm));
        Assert.All(limits.All, limit => Assert.False(limit.IsGeneral));
    }

    [Fact]
    public void A_table_that_allows_less_than_nine_tenths_of_the_diameter_does_not_loosen_that_rule()
    {
        var mean = LinkLimits.For(Table(mean: 4.2), holdsLoad: true, LawRegion.Germany).Of(LinkMeasure.MeanDiameter)!;
        Assert.Equal(4.5, mean.Mm, 9);
        Assert.True(mean.IsGeneral);
    }

    [Fact]
    public void A_conveyors_chain_has_its_makers_limits_or_none()
    {
        Assert.Empty(LinkLimits.For(Table(), holdsLoad: false, LawRegion.Germany).All);
        Assert.Equal(15.7, Assert.Single(LinkLimits.For(Table(one: 15.7), holdsLoad: false, LawRegion.Germany).All).Mm);
    }

    // OSHA Table N-184-1, 29 CFR 1910.184(e): size and minimum in millimetres, as facts of state copies print them to 0.01 mm.
    [Theory]
    [InlineData(6.35, 5.16)]
    [InlineData(9.525, 7.54)]
    [InlineData(12.7, 9.92)]
    [InlineData(15.875, 12.30)]
    [InlineData(19.05, 15.08)]
    [InlineData(22.225, 17.86)]
    [InlineData(25.4, 20.64)]
    [InlineData(28.575, 23.02)]
    [InlineData(31.75, 25.40)]
    [InlineData(34.925, 27.78)]
    [InlineData(38.1, 30.16)]
    [InlineData(44.45, 35.72)]
    public void A_sling_in_the_table_has_its_smallest_size_at_any_point(double d, double mm) =>
        Assert.Equal(mm, Mm(Table(d, 3 * d, LinkUse.Sling), LinkMeasure.ThinnestDiameter, LawRegion.UnitedStates)!.Value, 0.006);

    // 13 mm lies between 1/2 in (12.7) and 5/8 in (15.875): a legal table is never interpolated.
    [Theory]
    [InlineData(13)]
    [InlineData(16)]
    [InlineData(10)]
    [InlineData(7)]
    public void A_sling_between_two_rows_has_no_smallest_size_and_that_is_said(double d)
    {
        var limits = LinkLimits.For(Table(d, 3 * d, LinkUse.Sling), holdsLoad: true, LawRegion.UnitedStates);
        Assert.Null(limits.Of(LinkMeasure.ThinnestDiameter));
        Assert.Contains(limits.Remarks, r => r.ToString().Contains("never interpolated", StringComparison.Ordinal));
    }

    [Fact]
    public void The_row_that_was_recalled_says_so() => Assert.Contains("from memory",
        LinkLimits.For(Table(44.45, 133, LinkUse.Sling), true,
            LawRegion.UnitedStates).Of(LinkMeasure.ThinnestDiameter)!.Basis.ToString(),
        StringComparison.Ordinal);

    [Fact]
    public void Hoist_chain_is_no_sling_and_asks_no_sling_table() =>
        Assert.Null(LinkLimits.For(Table(6.35, 19.05), true, LawRegion.UnitedStates).Of(LinkMeasure.ThinnestDiameter));
}
