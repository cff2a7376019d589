using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>A chain that lifts or holds a load is judged by the upper end of what is known of it: docs/safety.md.</summary>
public sealed class LiftingConditionTests
{
    private static readonly DateTimeOffset Now = A.Monday.AddDays(270);

    // The oracle is the same chain with nothing hanging from it: 40 random lives of every kind, each at its own seed.
    [Fact]
    public void A_chain_that_lifts_is_never_judged_milder_than_the_same_chain_that_lifts_nothing()
    {
        var (stricter, judged) = (0, 0);
        foreach (var family in ChainFamily.All.Where(f => !f.AlwaysLifts))
        {
            for (var seed = 0; seed < 40; seed++)
            {
                var chance = new Random(1000 * family.Place + seed);
                var readings = Life(chance);
                var card = A.Card(fittedAt: A.Monday) with
                {
                    Family = family,
                    NotLiftingReason = "test: a conveyor",
                    LimitPercent = chance.Next(3) == 0 ? 0.5 + 3 * chance.NextDouble() : null,
                    SprocketTeeth = chance.Next(2) == 0 ? [19, 40 + chance.Next(90)] : [],
                };
                var (other, lifting) = (
                    Assess(card, readings), Assess(card with { Lifts = true, NotLiftingReason = "" }, readings));
                Assert.False(other.Card.HoldsLoad);
                Assert.True(lifting.Card.HoldsLoad);
                Assert.True(lifting.Condition >= other.Condition, $"{family} {seed}: {lifting.Condition}, {other.Condition}");
                Assert.True(lifting.Limit.Percent <= other.Limit.Percent, $"{family} {seed}: {lifting.Limit}, {other.Limit}");
                Assert.Null(other.OutOfUseBy);
                judged++;
                if (lifting.Condition > other.Condition) stricter++;
            }
        }

        Assert.InRange(stricter, judged / 20, judged);
    }

    // The same for the rule alone, over all that it is asked with.
    [Fact]
    public void The_rule_itself_is_never_milder_for_what_lifts()
    {
        var chance = new Random(7);
        for (var i = 0; i < 20_000; i++)
        {
            var elongation = 4 * chance.NextDouble();
            var early = 6000 * chance.NextDouble();
            var forecast = new WearForecast
            {
                LimitPercent = 3,
                ProbabilityPassed = chance.NextDouble(),
                PercentilesHours = [.. Enumerable.Range(1, 99).Select(p => early + 20 * p)],
            };
            var limit = new ReplacementLimit(3, LimitReason.General, "test") { PlanFromPercent = chance.Next(2) == 0 ? 2 : null };
            Condition Of(double? upper) => ConditionRule.Of(
                elongation, limit, forecast, 5000 * chance.NextDouble(), new RunningHours(1344), upper);
            var seed = chance.Next();
            chance = new Random(seed);
            var other = Of(null);
            chance = new Random(seed);
            Assert.True(Of(elongation + 0.3 * new Random(i).NextDouble() - 0.05) >= other);
        }
    }

    // Source: docs/references.md [30]: from 2 % a competent person sets a date of at most three months, whatever a forecast says.
    [Fact]
    public void From_the_first_reading_at_the_planning_mark_three_months_are_left_whatever_the_forecast_says()
    {
        var marked = A.Monday.AddDays(200);
        var readings = Even(0.05, [4000, 12_000, 20_000, 28_000, 33_000, 36_400], marked);
        var chain = Assess(Leaf(), readings);
        Assert.Equal(Condition.PlanASwap, chain.Condition);
        Assert.True(chain.DateAt(5, ProductionCalendar.AlwaysRunning, Now) > chain.OutOfUseBy);
        Assert.Equal(marked.AddMonths(3), chain.OutOfUseBy);
        var notice = Assert.Single(chain.Notices);
        Assert.True(notice.Urgent);
        Assert.Contains("out of use from 18 Dec 2026 at the latest", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("competent person", notice.WhatToDo.ToString(), StringComparison.Ordinal);
        Assert.Contains("pair", notice.WhatToDo.ToString(), StringComparison.Ordinal);
        var later = Assessment.Of(
            Leaf(), readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, marked.AddMonths(3).AddHours(1));
        Assert.Equal(Condition.SwapNow, later.Condition);
        Assert.StartsWith("Take it out of use now", Assert.Single(later.Notices).WhatToDo.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mark_reached_by_an_undated_reading_gives_no_time_at_all()
    {
        var chain = Assess(Leaf() with { FittedAt = null }, [A.Reading(500, 1.8), A.Reading(900, 2.1)]);
        Assert.Equal((Condition.SwapNow, Now), (chain.Condition, chain.OutOfUseBy));
    }

    [Fact]
    public void The_upper_end_holds_what_stays_the_same_all_a_chains_life()
    {
        var chain = Assess(Leaf(), Even(0.05, [4000, 12_000, 20_000, 28_000], A.Monday.AddDays(100)));
        var gauged = Assert.IsType<GaugeOutcome.Measured>(Gauge.Measure(A.PitchMm, 40, 40 * A.PitchMm * 1.016, Tool.Caliper));
        Assert.InRange(
            chain.LiftingUpperPercent!.Value, 1.6 + gauged.Elongation.ExpandedUncertaintyPercent - 1e-9,
            1.6 + 1.5 * gauged.Elongation.ExpandedUncertaintyPercent);
        Assert.Null(Assess(Leaf() with { Family = ChainFamily.Usual }, []).LiftingUpperPercent);
    }

    [Fact]
    public void A_chain_that_lifts_is_never_told_to_be_shortened_swapped_by_sprockets_or_within_reach_of_a_plan()
    {
        foreach (var percent in new[] { 0.5, 1.9, 2.1, 2.96, 3.4 })
        {
            var chain = Assess(Leaf(), [A.Reading(500, percent - 0.1, A.Monday), A.Reading(900, percent, A.Monday.AddDays(100))]);
            Assert.All(chain.Notices, notice => Assert.DoesNotMatch(
                "(?i)sprocket|pitches out|shorten|fit a new chain|plan a swap", $"{notice.Why}" + $"{notice.WhatToDo}"));
        }
    }

    // docs/safety.md: a person may be stricter than the standard, never milder.
    [Theory]
    [InlineData(5, 3)]
    [InlineData(2.5, 2.5)]
    public void A_limit_of_ones_own_counts_only_where_it_is_lower(double own, double governs)
    {
        var limit = ReplacementLimit.For(Leaf() with { LimitPercent = own, LimitSetReason = "test" });
        Assert.Equal((governs, 2.0), (limit.Percent, limit.PlanFromPercent));
        Assert.Equal(own > 3, LiftingCard.Faults(Leaf() with { LimitPercent = own }).Any(f => f.Column == "limit_pct"));
        Assert.Empty(LiftingCard.Faults(A.Card(limitPercent: own)));
    }

    [Fact]
    public void Only_a_chain_that_lifts_by_nature_may_be_said_not_to_and_a_leaf_chain_never()
    {
        var link = A.Card() with { Family = ChainFamily.Named("round_link") };
        Assert.True(link.HoldsLoad);
        Assert.False((link with { NotLiftingReason = "bucket elevator" }).HoldsLoad);
        Assert.Empty(LiftingCard.Faults(link with { NotLiftingReason = "bucket elevator" }));
        var leaf = Leaf() with { NotLiftingReason = "it only holds a door" };
        Assert.True(leaf.HoldsLoad);
        Assert.Equal("not_lifting_reason", Assert.Single(LiftingCard.Faults(leaf)).Column);
    }

    private static ChainCard Leaf() => A.Card(fittedAt: A.Monday.AddDays(-10)) with { Family = ChainFamily.Named("leaf") };

    private static Assessment Assess(ChainCard card, IReadOnlyList<Reading> readings) =>
        Assessment.Of(card, readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, Now);

    /// <summary>Readings of a chain that wears evenly, a week apart, the last of them at a moment.</summary>
    private static Reading[] Even(double percentPer1000Hours, double[] counters, DateTimeOffset last) =>
        [.. counters.Select((c, i) =>
            A.Reading(c, 0.2 + percentPer1000Hours * c / 1000, last.AddDays(-7 * (counters.Length - 1 - i))))];

    private static Reading[] Life(Random chance)
    {
        var (rate, hours, at) = (0.05 + 0.6 * chance.NextDouble(), 100.0, A.Monday.AddDays(5));
        var readings = new List<Reading>();
        for (var i = 0; i < 2 + chance.Next(6); i++)
        {
            readings.Add(A.Reading(hours, 0.15 + rate * hours / 1000 + 0.03 * (chance.NextDouble() - 0.5), at));
            (hours, at) = (hours + 300 + 900 * chance.NextDouble(), at.AddDays(10 + 20 * chance.NextDouble()));
        }

        return [.. readings];
    }
}
