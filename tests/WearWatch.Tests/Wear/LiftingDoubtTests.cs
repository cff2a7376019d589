using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Lifting.Examinations;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>
/// A reading that is not used and would take a lifting chain out of use leaves nobody able to judge it: docs/safety.md.
/// </summary>
public sealed class LiftingDoubtTests
{
    private static readonly DateTimeOffset Now = A.Monday.AddDays(270);

    private static readonly Reading[] Low =
        [A.Reading(500, 0.3, A.Monday.AddDays(30)), A.Reading(900, 0.35, A.Monday.AddDays(60)),
            A.Reading(1300, 0.4, A.Monday.AddDays(90))];

    [Theory]
    [InlineData(3.4)]
    [InlineData(9.0)] // more than any chain can have: held back by the gauge
    public void A_reading_that_waits_leaves_the_chain_unjudged_and_not_to_be_used(double percent)
    {
        var before = Assess(Leaf(), Low);
        Assert.Equal((Condition.WithinLimit, ""), (before.Condition, before.ReadingInDoubt.ToString()));
        var chain = LiftingDoubt.Govern(before, Low, [A.Reading(1700, percent, A.Monday.AddDays(120))]);
        Assert.Equal(Condition.NotKnown, chain.Condition);
        Assert.Contains("cannot be judged until the reading is confirmed", chain.ReadingInDoubt.ToString(),
            StringComparison.Ordinal);
        var notice = Assert.Single(chain.Notices, n => n.Kind == NoticeKind.ReadingHeldBack);
        Assert.True(notice.Urgent);
        Assert.StartsWith("Take it out of use", notice.WhatToDo.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_the_track_holds_back_does_the_same_until_two_others_answer_it_or_it_is_withdrawn()
    {
        Reading[] readings = [.. Low, A.Reading(1700, 9, A.Monday.AddDays(120))];
        Assert.Equal(Condition.NotKnown, Assess(Leaf(), readings).Condition);
        Assert.NotEmpty(Assess(Leaf(), [.. readings, A.Reading(2100, 0.45, A.Monday.AddDays(150))]).ReadingInDoubt.ToString());
        Assert.Empty(Assess(
            Leaf(), [.. readings, A.Reading(2100, 0.45, A.Monday.AddDays(150)), A.Reading(2500, 0.5, A.Monday.AddDays(180))])
            .ReadingInDoubt.ToString());
        Assert.Equal(Condition.WithinLimit, Assess(Leaf(), readings[..^1]).Condition);
    }

    [Fact]
    public void It_is_never_milder_than_without_that_reading()
    {
        foreach (var percent in new[] { 0.4, 2.1, 2.8, 3.2 })
        {
            Reading[] readings =
                [A.Reading(500, percent - 0.1, A.Monday.AddDays(30)), A.Reading(900, percent, A.Monday.AddDays(200))];
            var before = Assess(Leaf(), readings);
            var after = LiftingDoubt.Govern(before, readings, [A.Reading(950, 5, A.Monday.AddDays(210))]);
            Assert.True(Severity(after.Condition) >= Severity(before.Condition), $"{percent}");
            Assert.Equal(before.OutOfUseBy, after.OutOfUseBy);
            Assert.NotEmpty(after.ReadingInDoubt.ToString());
        }
    }

    [Fact]
    public void A_small_reading_one_of_the_chain_before_and_one_of_a_chain_that_lifts_nothing_raise_no_doubt()
    {
        var chain = Assess(Leaf(), Low);
        Assert.Same(chain, LiftingDoubt.Govern(chain, Low, [A.Reading(1700, 0.9, A.Monday.AddDays(120))]));
        Assert.Same(chain, LiftingDoubt.Govern(chain, Low, [A.Reading(1700, 5, A.Monday.AddDays(-100))]));
        var drive = Assess(Leaf() with { Family = ChainFamily.Usual }, Low);
        Assert.Same(drive, LiftingDoubt.Govern(drive, Low, [A.Reading(1700, 5, A.Monday.AddDays(120))]));
    }

    [Fact]
    public void The_fault_takes_it_out_of_use_but_condemns_nothing()
    {
        Assert.Equal(LiftingVerdict.OutOfUse, LiftingVerdicts.Of(LiftingFaultKind.ReadingInDoubt));
        var state = new LiftingState
        {
            Standing = LiftingStanding.InUse,
            Faults = [new(LiftingFaultKind.ReadingInDoubt, $"in doubt")],
            HasCertificate = true,
        };
        Assert.False(state.IsCondemned);
    }

    /// <summary>Cannot be judged stands between within the limits and the planning limit.</summary>
    private static int Severity(Condition condition) => condition switch
    {
        Condition.WithinLimit => 0,
        Condition.NotKnown => 1,
        Condition.PlanASwap => 2,
        _ => 3,
    };

    private static ChainCard Leaf() => A.Card(fittedAt: A.Monday.AddDays(-10)) with { Family = ChainFamily.Named("leaf") };

    private static Assessment Assess(ChainCard card, IReadOnlyList<Reading> readings) =>
        Assessment.Of(card, readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, Now);
}
