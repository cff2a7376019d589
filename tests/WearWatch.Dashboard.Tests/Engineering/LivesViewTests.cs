using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class LivesViewTests
{
    private static readonly double[] Short = [1000, 1100, 1250, 1300, 1400, 1500, 1550, 1700];
    private static readonly double[] Long = [4000, 4100, 4350, 4500, 4900, 5200, 5300, 5800];

    private static readonly FleetLives TwoLines = Desk.Fleet(Desk.Failed("Drying", Short), Desk.Failed("Press", Long));

    private static LivesFilter By(LifeGrouping grouping, params string[] shown) => new(grouping, Lognormal: false, shown);

    [Fact]
    public void Lines_that_last_unequally_are_told_apart()
    {
        var view = LivesView.Of(TwoLines, By(LifeGrouping.Line));
        Assert.Equal(["Drying", "Press"], view.Groups.Select(g => g.Name));
        Assert.Contains("They do not last equally long.", view.DifferenceInWords, StringComparison.Ordinal);
        Assert.All(view.Groups, g =>
            Assert.True(g.B10Interval!.Value.Contains(g.Fit!.B10Hours) && g.MedianInterval!.Value.Contains(g.Fit!.MedianHours)));
    }

    [Fact]
    public void Only_the_groups_asked_for_are_drawn_and_compared()
    {
        var view = LivesView.Of(TwoLines, By(LifeGrouping.Line, "Press"));
        Assert.Equal(["Press"], view.DrawnNames);
        Assert.Equal("Draw two or more groups to compare them.", view.DifferenceInWords);
    }

    [Fact]
    public void Suspended_lives_count_by_why_they_are_suspended()
    {
        var group = Assert.Single(LivesView.Of(
            Desk.Fleet([Desk.Chain(
                Desk.Card(), (5000, LifeEnd.ReachedLimit), (3000, LifeEnd.ReplacedBefore), (200, LifeEnd.StillRunning))]),
            By(LifeGrouping.All)).Groups);
        Assert.Equal((1, 1, 1), (group.Failures, group.ReplacedBefore, group.StillRunning));
        Assert.Equal(new LifeFitOutcome.TooFewFailures(1, 2), group.Outcome);
    }

    [Fact]
    public void Lives_of_unknown_fitting_are_left_out_and_counted()
    {
        var chain = new BookedChain(
            1, Desk.Card(), 3, [new BookedLife(0, new Life(900, LifeEnd.ReachedLimit), FittingKnown: false)]);
        var view = LivesView.Of(Desk.Fleet([chain]), By(LifeGrouping.All));
        Assert.Equal((0, 1), (view.Lives, view.LeftOut));
    }

    [Fact]
    public void A_plant_without_lives_has_nothing_to_show() =>
        Assert.Equal(0, LivesView.Of(Desk.Fleet(), By(LifeGrouping.Type)).Lives);

    [Theory]
    [InlineData(LifeGrouping.Type, "16B-1")]
    [InlineData(LifeGrouping.Line, "Press")]
    [InlineData(LifeGrouping.Lubrication, "by hand")]
    [InlineData(LifeGrouping.Dust, "clean")]
    [InlineData(LifeGrouping.Load, "0.4 to 0.7")]
    [InlineData(LifeGrouping.Family, "roller")]
    [InlineData(LifeGrouping.All, "all chains")]
    public void A_chain_belongs_to_the_group_that_its_card_names(LifeGrouping grouping, string group) =>
        Assert.Equal(group, grouping.Of(Desk.Card()));

    [Fact]
    public void What_a_card_does_not_tell_makes_a_group_of_its_own()
    {
        var card = Desk.Card(line: "", type: "", lubrication: null, dust: null, load: null);
        Assert.Equal("pitch 25.4 mm", LifeGrouping.Type.Of(card));
        Assert.Equal("no line recorded", LifeGrouping.Line.Of(card));
        Assert.All([LifeGrouping.Lubrication, LifeGrouping.Dust, LifeGrouping.Load],
            g => Assert.Equal("not recorded", g.Of(card)));
    }

    [Fact]
    public void A_filter_comes_back_from_its_address()
    {
        var filter = new LivesFilter(LifeGrouping.Lubrication, Lognormal: true, ["by hand", "runs dry & hot"]);
        Assert.Equal(filter, LivesFilter.FromQuery(filter.ToQuery()));
        Assert.Equal(By(LifeGrouping.Type), LivesFilter.FromQuery("?by=nonsense&by=17&paper=tracing"));
    }

    [Fact]
    public void No_more_groups_are_drawn_than_can_be_told_apart()
    {
        var filter = By(LifeGrouping.Line);
        foreach (var name in "abcdefgh") filter = filter.Toggle(name.ToString(), filter.Shown);
        Assert.Equal(["d", "e", "f", "g", "h"], filter.Shown);
        Assert.DoesNotContain("f", filter.Toggle("f", filter.Shown).Shown);
    }

    [Fact]
    public void Lives_of_one_position_go_to_the_lots_that_their_chains_came_from()
    {
        var chain = new BookedChain(1, Desk.Card(), 3,
        [
            new BookedLife(0, new Life(1000, LifeEnd.ReachedLimit), FittingKnown: true) { Lot = "A-1" },
            new BookedLife(1, new Life(2000, LifeEnd.ReplacedBefore), FittingKnown: true) { Lot = "B-2" },
            new BookedLife(2, new Life(300, LifeEnd.StillRunning), FittingKnown: true),
        ]);
        var view = LivesView.Of(Desk.Fleet([chain]), LivesFilter.FromQuery("?by=lot"));
        Assert.Equal(["A-1", "B-2", "no lot recorded"], view.Groups.Select(g => g.Name));
        Assert.All(view.Groups, g => Assert.Single(g.Lives));
    }
}
