using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Links;
using WearWatch.Wear;

namespace WearWatch.Tests.Links;

public sealed class LinkVerdictTests
{
    // A hoist maker's published row of 5x15: L1 15.7, L11 170.6, dm 4.5 (docs/references.md [74]).
    internal static LinkTableEntry FiveByFifteenEntry { get; } = new()
    {
        DiameterMm = 5,
        Use = LinkUse.PoweredHoist,
        OneLinkLimitMm = 15.7,
        SeveralLinksLimitMm = 170.6,
        DiameterLimitMm = 4.5,
        Source = "a hoist maker's manual, p. 12",
    };

    internal static LinkTable FiveByFifteen { get; } = LinkTable.Of(FiveByFifteenEntry, 15);

    internal static LinkLimits Limits { get; } = LinkLimits.For(FiveByFifteen, holdsLoad: true, LawRegion.Germany);

    private static LinkVerdict Of(double? one = null, double? several = null, double? d1 = null, double? d2 = null) =>
        LinkVerdict.Of(
        new MeasuredLinks { OneLinkMm = one, SeveralLinksMm = several, D1Mm = d1, D2Mm = d2 }, FiveByFifteen, Limits);

    // By hand: (15.28 - 15)/(15.7 - 15) = 40 %; (167 - 165)/(170.6 - 165) = 35.7 %; (5 - 4.95)/(5 - 4.5) = 10 %.
    [Fact]
    public void Each_measure_stands_on_the_way_to_its_own_limit_and_the_worst_comes_first()
    {
        var verdict = Of(15.28, 167, 4.9, 5.0);
        Assert.Equal([LinkMeasure.OneLink, LinkMeasure.SeveralLinks, LinkMeasure.MeanDiameter],
            verdict.Findings.Select(f => f.Measure));
        Assert.Equal([40, 35.714, 10], verdict.Findings.Select(f => f.UsedPercent!.Value), (a, b) => Math.Abs(a - b) < 0.001);
        Assert.Equal(Condition.WithinLimit, verdict.Condition);
        Assert.StartsWith(
            "40 % of the way to its limit: inner length of one link 15.28 mm", $"{verdict.Sentence}", StringComparison.Ordinal);
    }

    // Each measure alone at the maker's limit, the others as new.
    [Theory]
    [InlineData(15.7, 165, 5.0, 5.0, LinkMeasure.OneLink)]
    [InlineData(15, 170.6, 4.6, 5.3, LinkMeasure.SeveralLinks)]
    [InlineData(15, 165, 4.2, 4.8, LinkMeasure.MeanDiameter)]
    public void One_measure_at_its_limit_takes_the_chain_out_of_use(
        double one, double several, double d1, double d2, LinkMeasure worst)
    {
        var verdict = Of(one, several, d1, d2);
        Assert.Equal(Condition.SwapNow, verdict.Condition);
        Assert.Equal(worst, verdict.Worst!.Measure);
        Assert.StartsWith("Discard limit reached", verdict.Sentence.ToString(), StringComparison.Ordinal);
    }

    // u(L1) = sqrt((0.03/sqrt 3)^2 + 0.05^2) = 0.05292 mm, so 15.60 +- 0.106 reaches 15.7 and 15.59 +- 0.106 does not.
    [Theory]
    [InlineData(15.60, Condition.SwapNow)]
    [InlineData(15.59, Condition.PlanASwap)]
    [InlineData(15.46, Condition.WithinLimit)] // 65.7 %, below two thirds
    public void The_upper_end_of_the_uncertainty_decides(double one, Condition condition) =>
        Assert.Equal(condition, Of(one).Condition);

    [Fact]
    public void Uncertainties_are_those_computed_by_hand()
    {
        Assert.Equal(0.05292, LinkUncertainty.StandardMm(LinkMeasure.OneLink, 15, Tool.Caliper), 5);
        Assert.Equal(0.02739, LinkUncertainty.StandardMm(LinkMeasure.MeanDiameter, 5, Tool.Caliper), 5);
        Assert.Equal(0.03464, LinkUncertainty.StandardMm(LinkMeasure.ThinnestDiameter, 5, Tool.Caliper), 5);
        // Tape of class II below a metre: 0.5/sqrt 3 and 1/sqrt 6; temperature 165 x 11.5e-6 x 5/sqrt 3.
        Assert.Equal(0.50003, LinkUncertainty.StandardMm(LinkMeasure.SeveralLinks, 165, Tool.Tape), 5);
    }

    [Fact]
    public void What_was_not_measured_is_told_and_never_taken_as_good()
    {
        var verdict = Of(one: 15.1, d1: 4.9);
        Assert.Equal([LinkMeasure.SeveralLinks, LinkMeasure.MeanDiameter], verdict.NotMeasured);
        Assert.EndsWith("Not measured: length over links, mean of two diameters. No statement on that.",
            verdict.Sentence.ToString(),
            StringComparison.Ordinal);
        Assert.Equal(Condition.NotKnown, Of().Condition);
    }

    [Fact]
    public void A_measure_without_a_limit_cannot_be_judged()
    {
        var verdict = LinkVerdict.Of(
            new MeasuredLinks { OneLinkMm = 15.1 }, FiveByFifteen, LinkLimits.For(
                LinkTable.Of(new() { DiameterMm = 5 }, 15), holdsLoad: false, LawRegion.Germany));
        Assert.Equal(Condition.NotKnown, verdict.Condition);
        Assert.Contains("Cannot be judged", verdict.Sentence.ToString(), StringComparison.Ordinal);
    }

    // A crown worn in the direction of pull by 20 % halves into dm 10 % (facts of the trade, derived): 4.0 and 5.0 make 4.5.
    [Fact]
    public void The_mean_of_both_diameters_counts_and_they_stay_apart()
    {
        var verdict = Of(d1: 4.0, d2: 5.0);
        Assert.Equal(4.5, verdict.Worst!.ValueMm);
        Assert.Equal(Condition.SwapNow, verdict.Condition);
    }

    // 1/2 in sling: least 25/64 in = 9.92 mm at any point.
    [Fact]
    public void An_american_sling_is_held_at_its_thinnest_point()
    {
        var table = LinkTable.Of(new() { DiameterMm = 12.7, Use = LinkUse.Sling }, 38.1);
        var limits = LinkLimits.For(table, true, LawRegion.UnitedStates);
        var verdict = LinkVerdict.Of(new MeasuredLinks { D1Mm = 9.9, D2Mm = 13.2 }, table, limits);
        Assert.Equal(LinkMeasure.ThinnestDiameter, verdict.Worst!.Measure);
        Assert.Equal(Condition.SwapNow, verdict.Condition);
        Assert.False(verdict.Findings[1].IsReached); // the mean of 11.55 mm stands above 0.9 x 12.7 = 11.43
    }

    // By hand: mean of 17.1 and 17.3 is 17.2; 100 (18 - 17.2)/18 = 4.4444 %. A tenth of 18 mm is gone at 16.2.
    [Theory]
    [InlineData(17.1, 17.3, 4.4444, false)]
    [InlineData(16.21, 16.21, 9.9444, false)]
    [InlineData(16.2, 16.2, 10, true)]
    public void A_link_is_discarded_from_a_tenth_of_its_diameter_on(double d1, double d2, double percent, bool reached)
    {
        var table = LinkTable.Of(new() { DiameterMm = 18 }, 64);
        var mean = Assert.Single(LinkVerdict.Of(
            new MeasuredLinks { D1Mm = d1, D2Mm = d2 }, table, LinkLimits.For(table, true, LawRegion.Germany)).Findings);
        Assert.Equal(percent, mean.ChangePercent, 4);
        Assert.Equal(reached, mean.IsReached);
    }

    // The marks by which a phone judges are where the verdict turns.
    [Fact]
    public void The_marks_for_a_phone_are_where_the_verdict_turns()
    {
        foreach (var mark in LinkMark.Of(FiveByFifteen, Limits))
        {
            var away = mark.Limit.IsLength ? -1e-6 : 1e-6;
            Assert.Equal(Condition.SwapNow, At(mark.Limit.Measure, mark.OutMm - away));
            Assert.Equal(Condition.PlanASwap, At(mark.Limit.Measure, mark.OutMm + away));
            Assert.Equal(Condition.PlanASwap, At(mark.Limit.Measure, mark.PlanMm - away));
            Assert.Equal(Condition.WithinLimit, At(mark.Limit.Measure, mark.PlanMm + away));
        }

        Condition At(LinkMeasure measure, double mm) => measure switch
        {
            LinkMeasure.OneLink => Of(one: mm),
            LinkMeasure.SeveralLinks => Of(several: mm),
            _ => Of(d1: mm, d2: mm),
        } is { Worst: var worst } ? worst!.Condition : Condition.NotKnown;
    }
}
