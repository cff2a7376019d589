using WearWatch.Chains.Links;
using WearWatch.Dashboard.Engineer.Workbench.Gauging;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;
using WearWatch.Units;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class GaugeBenchTests
{
    // Source: docs/references.md [21]: 24 in of chain at 24.75 in are 3.1 %.
    [Fact]
    public void A_length_in_inches_is_read_as_it_stands_on_the_tape()
    {
        var worked = Bench.Gauge("type=80-1&pitches=24&length=24 3/4&unit=in");
        Assert.Equal(3.125, worked.Elongation.Percent, 1e-9);
        Assert.Equal(Condition.SwapNow, worked.Condition);
    }

    // Source: docs/references.md [4]: the mean of inside and outside of two rollers is the distance of their centres.
    [Fact]
    public void Inside_and_outside_make_the_length() =>
        Assert.Equal(270.5, Bench.Gauge("pitch_mm=19.05&pitches=14&tool=caliper&inside=258.6&outside=282.4").Span.LengthMm, 1e-9);

    // By hand: 100 (18 - 17.2)/18. The diameter when new comes with the type, or is told.
    [Theory]
    [InlineData("type=18x64&pitches=11&length=708&link_diameters=17.1; 17.3")]
    [InlineData("pitch_mm=64&family=round_link&pitches=11&length=708&d1=17.1&d2=17.3&link_diameter_new=18")]
    public void A_round_link_is_judged_by_its_diameter_too(string asked) => Assert.Equal(4.444,
        Bench.Gauge(asked).Links!.Verdict.Findings.Single(f => f.Measure == LinkMeasure.MeanDiameter).ChangePercent, 1e-3);

    // 22x86 with a tenth of its diameter gone: its length alone would be within limits.
    [Fact]
    public void The_verdict_is_headed_by_the_worst_of_length_and_diameter()
    {
        var gauged = Bench.Gauge("type=22x86&pitches=11&length=949&d1=19.0&d2=20.6");
        Assert.Equal(Condition.SwapNow, gauged.Condition);
        Assert.StartsWith("Discard limit reached: mean of two diameters 19.80 mm", gauged.Verdict.ToString(),
            StringComparison.Ordinal);
        Assert.Equal("take out of use", gauged.ShownCondition.Words.ToString());
    }

    [Fact]
    public void A_length_over_as_many_links_as_the_table_has_is_held_against_its_limit() => Assert.Equal(708,
        Bench.Gauge("type=18x64&pitches=11&length=708&d1=17.1&d2=17.3").Links!.Verdict.Findings
            .Single(f => f.Measure == LinkMeasure.SeveralLinks).ValueMm);

    // Two misprints that were met: 21.2 mm for a chain of 5 mm, and 5.9 mm beside 0.239 in.
    [Theory]
    [InlineData("pitch_mm=15&link_diameter_new=5&diameter_limit=21.2", "diameter_limit")]
    [InlineData("pitch_mm=21&link_diameter_new=7&diameter_limit=5.9&diameter_limit_in=0.239", "diameter_limit_in")]
    [InlineData("pitch_mm=15&one_link_limit=15.7", "link_diameter_new")]
    [InlineData("pitch_mm=15&link_diameter_new=5&link_diameters=4.9", "link_diameters")]
    public void A_misprint_in_a_makers_table_is_refused_by_its_name(string asked, string name)
    {
        var answer = LinkBench.Answer(Bench.Ask("family=round_link&d1=4.8&d2=4.9&table_source=a manual&" + asked));
        Assert.Contains(Assert.IsType<BenchAnswer<LinkCalculation>.Refused>(answer).Refusals, r => r.Field == name);
    }

    [Fact]
    public void Several_readings_count_by_their_mean() =>
        Assert.Equal(617.7, Bench.Gauge("type=16B-1&pitches=24&length=617.5; 617.9").Span.LengthMm, 1e-9);

    // Source: docs/references.md [2], JCGM 100 [1]: shares of a variance add up to one, and expanded is twice standard.
    [Fact]
    public void The_budget_adds_up()
    {
        var worked = Bench.Gauge("type=16B-1&pitches=24&length=617.5&from_hook=yes&tape_class=III");
        Assert.Equal(1, worked.Budget.Components.Sum(worked.Budget.ShareOf), 1e-12);
        Assert.Equal(2 * worked.Budget.StandardUncertaintyPercent, worked.Elongation.ExpandedUncertaintyPercent, 1e-12);
        Assert.True(worked.Budget.StandardUncertaintyPercent
            > Bench.Gauge("type=16B-1&pitches=24&length=617.5&tape_class=I").Budget.StandardUncertaintyPercent);
    }

    // Common practice: an uncertainty of a tenth of the limit is good enough.
    [Theory]
    [InlineData("limit_pct=3")]
    [InlineData("limit_pct=1.5")]
    [InlineData("limit_pct=1")]
    public void The_proposal_keeps_the_uncertainty_below_a_tenth_of_the_limit(string limit)
    {
        var proposal = Bench.Gauge("type=16B-1&pitches=24&length=617.5&" + limit).Proposal;
        Assert.True(proposal.GoodEnough && int.IsEvenInteger(proposal.Pitches));
        Assert.True(Bench.Gauge($"type=16B-1&pitches={proposal.Pitches}&length={25.4 * proposal.Pitches}&{limit}").IsGoodEnough);
    }

    [Fact]
    public void A_length_that_no_chain_has_is_doubted_until_a_person_says_it_is_right()
    {
        Assert.Equal(Condition.NotKnown, Bench.Gauge("type=16B-1&pitches=25&length=617.5").Condition);
        Assert.Equal(Condition.WithinLimit, Bench.Gauge("type=16B-1&pitches=25&length=617.5&confirmed=yes").Condition);
    }

    [Theory]
    [InlineData(609.6, Condition.WithinLimit)]
    [InlineData(621.5, Condition.WithinLimit)]
    [InlineData(627.5, Condition.PlanASwap)] // 2.94 %, but up to 3.09 % within its uncertainty
    [InlineData(627.9, Condition.SwapNow)]
    public void The_verdict_minds_the_uncertainty(double lengthMm, Condition condition) =>
        Assert.Equal(condition, Bench.Gauge(FormattableString.Invariant($"type=16B-1&pitches=24&length={lengthMm}")).Condition);

    // Source: docs/references.md [27]: conveyor chain is planned from 2 %.
    [Fact]
    public void A_conveyor_chain_is_planned_from_two_percent() =>
        Assert.Equal(Condition.PlanASwap, Bench.Gauge("type=M112x160&pitches=10&length=1636").Condition);

    [Fact]
    public void What_is_wrong_is_said_by_field_all_at_once() => Assert.Equal(
        ["type", "pitches", "length", "limit_pct"],
        Bench.Refused(GaugeBench.Answer(Bench.Ask("type=16Q&pitches=half&length=17 3/7&limit_pct=30"))));

    [Fact]
    public void Only_one_side_of_the_rollers_is_not_enough() =>
        Assert.Equal(["outside"], Bench.Refused(GaugeBench.Answer(Bench.Ask("pitch_mm=19.05&pitches=14&inside=258.6"))));

    [Fact]
    public void A_pitch_that_is_still_to_be_chosen_is_asked_for() =>
        Assert.Equal(["type"], Bench.Refused(GaugeBench.Answer(Bench.Ask("type=M112&pitches=10&length=1636"))));

    [Fact]
    public void The_page_writes_in_a_persons_units()
    {
        var worked = Bench.Gauge("type=16B-1&pitches=24&length=617.5");
        Assert.Contains(
            "617.5 mm over 24 pitches of 25.4 mm", GaugeView.Of(worked, UnitPreference.Si).Measured.ToString(),
                StringComparison.Ordinal);
        Assert.Contains("24.311 in over 24 pitches of 1 in", GaugeView.Of(worked,
            new UnitPreference(LengthUnit.Inch)).Measured.ToString(),
            StringComparison.Ordinal);
    }

    // Geometry: over 9 pitches a true 2 % reads 1.78 or 2.22 %.
    [Fact]
    public void An_odd_number_of_pitches_is_remarked_on_and_corrected_when_the_first_link_is_told()
    {
        var told = Bench.Gauge("pitch_mm=25.4&pitches=9&length=232.66&first_link=outer");
        Assert.Equal(2.0, told.Elongation.Percent, 0.01);
        Assert.Contains(GaugeView.Of(told, UnitPreference.Si).Remarks, r =>
            r.ToString().Contains("corrected", StringComparison.Ordinal));
        var untold = Bench.Gauge("pitch_mm=25.4&pitches=9&length=232.66");
        Assert.Contains(untold.Budget.Components, c => c.Name.ToString() == "odd number of pitches");
    }
}
