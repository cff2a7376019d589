using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class RecordViewTests
{
    private static readonly RecordFilter ByModel = new(Remade: false, AtShare: 0.5, By: null);

    [Fact]
    public void Forecasts_are_summed_up_by_share_of_life()
    {
        var view = RecordView.Of([Desk.Recorded(), Desk.Recorded(life: 2900), Desk.Recorded(share: 0.75)], ByModel);
        Assert.Equal([0, 2, 1, 0], view.ByShare.Select(r => r.Record.Count));
        Assert.Equal(new ObservedShare(1, 2), view.Looked.Held90);
        Assert.Equal(2, view.Lives);
    }

    [Fact]
    public void Groups_are_those_at_the_share_looked_at()
    {
        var view = RecordView.Of(
            [Desk.Recorded(model: "m2"), Desk.Recorded(), Desk.Recorded(), Desk.Recorded(share: 0.9, model: "m3")], ByModel);
        Assert.Equal([("m1", 2), ("m2", 1)], view.ByGroup.Select(g => (g.Group, g.Record.Count)));
        Assert.Equal(
            ["Press"], RecordView.Of([Desk.Recorded()], ByModel with { By = LifeGrouping.Line }).ByGroup.Select(g => g.Group));
    }

    // Exact binomial bands, 95 %: 90 of 100 is .824 to .951, 75 of 100 is .653 to .831, 199 of 200 is .972 to 1.
    [Theory]
    [InlineData(17, 19, "too few to tell")]
    [InlineData(90, 100, "as often as stated")]
    [InlineData(75, 100, "too seldom: intervals are too narrow")]
    [InlineData(199, 200, "too often: intervals are wider than need be")]
    public void An_interval_is_judged_by_whether_its_band_holds_what_it_states(int hits, int of, string verdict) =>
        Assert.Equal(verdict, RecordView.Verdict(new ObservedShare(hits, of), 0.9).ToString());

    [Fact]
    public void A_filter_comes_back_from_its_address()
    {
        var filter = new RecordFilter(Remade: true, AtShare: 0.9, LifeGrouping.Dust);
        Assert.Equal(filter, RecordFilter.FromQuery(filter.ToQuery()));
        Assert.Equal(ByModel, RecordFilter.FromQuery("?at=57&by=all&source=elsewhere"));
    }

    [Fact]
    public void A_kept_forecast_is_scored_from_where_it_stood()
    {
        var chain = Desk.Chain(Desk.Card(), (12_000, LifeEnd.ReachedLimit));
        // last reading 6,000 h, 1,000 to 9,000 h left
        var score = KeptForecasts.Score(chain, chain.Lives[0], 0.75, A.Forecast(1)).Score;
        Assert.Equal((6000, 9000, 0.75), (score.LastReadingHours, score.StandingHours, score.LifeShare));
        Assert.Equal((11_000.0 - 12_000) / 3000, score.RelativeError!.Value, 9);
        Assert.True(score.Held90);
    }
}
