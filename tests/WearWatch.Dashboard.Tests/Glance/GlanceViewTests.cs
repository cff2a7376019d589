using WearWatch.Dashboard.Overview.Glance;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Glance;

public sealed class GlanceViewTests
{
    [Fact]
    public void Every_condition_is_counted_the_most_urgent_first()
    {
        var view = View(Chain(condition: Condition.SwapNow), Chain(), Chain(), Chain(condition: Condition.NotKnown));
        Assert.Equal(
            [(Condition.SwapNow, 1), (Condition.PlanASwap, 0), (Condition.WithinLimit, 2), (Condition.NotKnown, 1)],
            view.Conditions.Select(c => (c.Condition.Condition, c.Chains)));
    }

    [Fact]
    public void A_count_links_to_the_list_of_its_chains() =>
        Assert.Equal("/chains?condition=plan-a-swap", View(Chain()).Conditions[1].Link);

    [Fact]
    public void Chains_that_lift_are_counted_apart_and_none_of_them_is_green()
    {
        var view = View(Chain(), Chain(lifts: true), Chain(lifts: true, condition: Condition.SwapNow));
        Assert.Equal(
            [("take out of use", 1), ("wear within limits; not a release for use", 1), ("within limit", 1)],
            view.Conditions.Where(c => c.Chains > 0).Select(c => (c.Condition.Words.ToString(), c.Chains)).Order());
        Assert.Equal("/chains?condition=within-limit&lifts=no", view.Conditions[2].Link);
        Assert.Equal("/chains?condition=take-out-of-use", view.Conditions[4].Link);
        Assert.All(
            view.Conditions.Where(c => c.Condition.HoldsLoad), c => Assert.NotEqual(SignalColour.Green, c.Condition.Colour));
        var kinds = view.Conditions.Select(c => c.Condition).ToList();
        Assert.All(view.Lines, l => Assert.Equal(kinds, l.Conditions.Select(c => c.Condition)));
    }

    [Fact]
    public void Weeks_begin_on_Monday_and_the_first_holds_what_was_due_before()
    {
        // The builder's now is Wednesday, 25 November 2026.
        var view = View(Chain(early: -40), Chain(early: 4), Chain(early: 5), Chain(early: 11.4));
        Assert.Equal(new DateOnly(2026, 11, 23), view.Weeks[0].Monday);
        Assert.Equal([2, 2, 0], view.Weeks.Take(3).Select(w => w.Chains));
        Assert.Equal(4, view.DueAhead);
    }

    [Fact]
    public void The_plants_own_zone_decides_the_week()
    {
        // Sunday 23:30 in UTC is Monday in Vienna already.
        var early = new DateTimeOffset(2026, 11, 29, 23, 30, 0, TimeSpan.Zero);
        var chain = new ChainNow("K", "Press", ConditionWords.Of(Condition.PlanASwap, false), early, null, false);
        Assert.Equal(1, GlanceView.Of([chain], [], new NoticeCounts(0, 0), [], A.Time("UTC")).Weeks[0].Chains);
        Assert.Equal(1, GlanceView.Of([chain], [], new NoticeCounts(0, 0), [], A.Time("Europe/Vienna")).Weeks[1].Chains);
    }

    [Fact]
    public void What_comes_due_after_the_strip_is_left_out() => Assert.Equal(0, View(Chain(early: 7 * 13)).DueAhead);

    [Fact]
    public void A_week_links_to_what_is_due_up_to_its_end() =>
        Assert.Equal("/chains?due=2026-11-30", View(Chain()).Weeks[0].Link);

    [Fact]
    public void Oil_due_within_a_week_is_shown_the_longest_overdue_first()
    {
        var view = View(Chain("a", oil: 3), Chain("b", oil: -2), Chain("c", oil: 30), Chain("d"));
        Assert.Equal([("b", true), ("a", false)], view.Oil.Select(o => (o.Chain, o.Overdue)));
    }

    [Fact]
    public void Lines_stand_by_name_with_their_next_early_date()
    {
        var view = View(Chain(line: "Press", early: 50), Chain(line: "Press", early: -3), Chain(line: "Drying", early: 9),
            Chain(line: "Press", early: 20));
        Assert.Equal(
            [("Drying", 1, A.In(9)), ("Press", 3, A.In(20))], view.Lines.Select(l => (l.Line, l.Chains, l.NextDue!.Value)));
    }

    [Fact]
    public void A_plant_without_chains_is_empty() => Assert.True(View().IsEmpty);

    private static GlanceView View(params ChainNow[] chains) => GlanceView.Of(chains, [], new NoticeCounts(0, 0), [], A.Time());

    private static ChainNow Chain(
        string name = "K", string line = "Press", Condition condition = Condition.WithinLimit, double? early = null, double? oil =
            null, bool lifts = false, bool planned = false) =>
        new(
            name, line, ConditionWords.Of(condition, lifts), early is { } e ? A.In(e) : null, oil is { } o ? A.In(o) : null,
            planned);
}
