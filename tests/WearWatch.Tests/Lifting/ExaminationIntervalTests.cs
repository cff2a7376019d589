using WearWatch.Chains;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Tests.Lifting;

public sealed class ExaminationIntervalTests
{
    // Sources beside each row; as printed in the regulation or in a summary of it (docs/safety.md).
    [Theory]
    [InlineData(LawRegion.UnitedKingdom, LiftingUse.Truck, false, false, 12, 12)] // LOLER 1998 reg. 9(3)(a)(ii)
    [InlineData(LawRegion.UnitedKingdom, LiftingUse.Truck, true, false, 6, 6)] // LOLER 1998 reg. 9(3)(a)(i): persons
    [InlineData(LawRegion.UnitedKingdom, LiftingUse.Truck, false, true, 6, 12)] // trade guidance: over 40 h a week
    [InlineData(LawRegion.UnitedKingdom, LiftingUse.Hoist, false, false, 12, 12)] // LOLER 1998 reg. 9(3)(a)(ii)
    [InlineData(LawRegion.UnitedKingdom, LiftingUse.Hoist, true, false, 6, 6)] // LOLER 1998 reg. 9(3)(a)(i)
    [InlineData(LawRegion.UnitedKingdom, LiftingUse.Sling, false, false, 6, 6)] // LOLER 1998 reg. 9(3)(a)(i): accessory
    [InlineData(LawRegion.Germany, LiftingUse.Truck, false, false, 12, 12)] // DGUV Vorschrift 68 par. 37
    [InlineData(LawRegion.Germany, LiftingUse.Hoist, false, false, 12, 12)] // DGUV Vorschrift 54 par. 23(2)
    [InlineData(LawRegion.Germany, LiftingUse.Sling, false, false, 12, 12)] // DGUV Regel 109-017
    [InlineData(LawRegion.Germany, LiftingUse.Sling, false, true, 6, 12)] // BG Bau leaflet: heavy use
    [InlineData(LawRegion.France, LiftingUse.Truck, false, false, 6, 6)] // decree of 1 March 2004
    [InlineData(LawRegion.France, LiftingUse.Sling, false, false, 12, 12)] // decree of 1 March 2004
    [InlineData(LawRegion.UnitedStates, LiftingUse.Sling, false, false, 12, 12)] // 29 CFR 1910.184(e)(3)
    [InlineData(LawRegion.UnitedStates, LiftingUse.Sling, false, true, 1, 12)] // ASME B30.9: severe, 1 to 3 months
    public void The_regions_rule_presets_the_months_and_says_how_long_they_may_be(
        LawRegion region, LiftingUse use, bool persons, bool heavy, int months, int most)
    {
        var rule = IntervalRules.For(new IntervalCase(region, use, persons, heavy));
        Assert.Equal((months, most), (rule.Months!.Value, rule.MostMonths!.Value));
        Assert.True(rule.Source.Length > 0 && rule.Certainty.ToString().Length > 0);
    }

    // AS 3775 (2014), a guide as listed by a supplier: second hand.
    [Theory]
    [InlineData(5, 12)]
    [InlineData(6, 6)]
    [InlineData(25, 6)]
    [InlineData(26, 3)]
    [InlineData(200, 3)]
    [InlineData(201, 1)]
    [InlineData(null, 1)]
    public void In_Australia_a_sling_is_examined_by_its_lifts_in_a_week(int? lifts, int months) => Assert.Equal(
        months, IntervalRules.For(new IntervalCase(LawRegion.Australia, LiftingUse.Sling, LiftsPerWeek: lifts)).Months);

    [Theory]
    [InlineData(LawRegion.EuropeanUnion, LiftingUse.Hoist)] // Directive 2009/104/EC art. 5 names no number
    [InlineData(LawRegion.UnitedStates, LiftingUse.Truck)] // 29 CFR 1910.178(q)(7): daily, the months are the maker's
    [InlineData(LawRegion.NotSet, LiftingUse.Sling)]
    public void Where_a_rule_names_no_months_none_are_made_up(LawRegion region, LiftingUse use)
    {
        var interval = ExaminationInterval.Of(new IntervalCase(region, use), set: null, schemeOnFile: false);
        Assert.Null(interval.Months);
        Assert.Equal(9, ExaminationInterval.Of(new IntervalCase(region, use), set: 9, schemeOnFile: false).Months);
    }

    [Fact]
    public void An_interval_can_be_shorter_at_will_and_longer_than_the_law_only_under_a_written_scheme_where_the_law_knows_one()
    {
        var hoist = new IntervalCase(LawRegion.UnitedKingdom, LiftingUse.Hoist);
        Assert.Equal(3, ExaminationInterval.Of(hoist, 3, schemeOnFile: false).Months);
        Assert.Equal((12, true), Of(hoist, 18, scheme: false));
        Assert.Equal((18, false), Of(hoist, 18, scheme: true));
        Assert.Equal((12, true), Of(hoist with { Region = LawRegion.Germany }, 18, scheme: true));

        static (int, bool) Of(IntervalCase asked, int months, bool scheme)
        {
            var interval = ExaminationInterval.Of(asked, months, scheme);
            return (interval.Months!.Value, interval.IsCut);
        }
    }

    [Fact]
    public void No_case_ever_gets_more_months_than_its_law_lets_it_have()
    {
        foreach (var region in Enum.GetValues<LawRegion>())
            foreach (var use in Enum.GetValues<LiftingUse>())
                foreach (var (persons, heavy) in new[] { (false, false), (true, false), (false, true), (true, true) })
                    foreach (int? set in new int?[] { null, 1, 6, 12, 13, 60, 120 })
                    {
                        var asked = new IntervalCase(region, use, persons, heavy, 10);
                        var rule = IntervalRules.For(asked);
                        Assert.True(rule.Months is null || rule.Months <= rule.MostMonths, asked.ToString());
                        var months = ExaminationInterval.Of(asked, set, schemeOnFile: false).Months;
                        Assert.True(rule.MostMonths is null || months <= rule.MostMonths, $"{asked}, set {set}: {months}");
                        Assert.True(set is null || months <= set, $"{asked}, set {set}: {months}");
                    }
    }
}
