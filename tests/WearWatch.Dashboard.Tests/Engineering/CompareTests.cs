using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Compare;
using WearWatch.Lives;
using WearWatch.Planning.Costs;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class CompareTests
{
    private static readonly CostTerms Terms = new(new PlanningCosts(), new Dictionary<string, double>(), 3, 200);

    private static readonly PlantTime Time = new(A.Now, TimeZoneInfo.Utc);

    [Theory]
    [InlineData("")]
    [InlineData("?by=lot&a=A-1&b=B%202&b_from=2026-01-01")]
    [InlineData("?by=line&a_to=2026-01-01&b_from=2026-01-01&b_to=2026-06-01")]
    public void A_comparison_survives_its_address(string query)
    {
        var filter = CompareFilter.FromQuery(query);
        Assert.Equal(filter, CompareFilter.FromQuery(filter.ToQuery()));
    }

    // Press wears twice as fast as Drying, in 20 lives each that scatter by 10 %.
    [Fact]
    public void A_group_that_wears_twice_as_fast_is_told_with_its_interval()
    {
        var view = CompareView.Of(Desk.Fleet(Line("Drying", 2000), Line("Press", 1000)), [], Terms,
            CompareFilter.FromQuery("?by=line&a=Drying&b=Press"), Time);
        var (rate, life) = (view.Rows[0], view.Rows[1]);
        Assert.True(rate.Difference is { IsSeen: true } r && r.Interval.Contains(2));
        Assert.True(life.Difference is { IsSeen: true } l && l.Interval.Contains(0.5));
        Assert.Equal(["they differ", "they differ"], view.Rows.Take(2).Select(r => r.Verdict.ToString()));
        Assert.Null(view.Rows[3].Difference); // no forecasts
        Assert.True(view.LogRank.PValue < 0.001);
        Assert.Equal(["Drying", "Press"], view.Groups);
    }

    [Fact]
    public void Where_nothing_was_picked_the_two_groups_with_most_lives_are_compared()
    {
        var fleet = Desk.Fleet(Line("Drying", 2000), Line("Press", 1000), [.. Line("Silo", 1500).Take(3)]);
        Assert.Equal(CompareFilter.FromQuery("?by=line&a=Drying&b=Press"),
            CompareView.Opening(fleet, CompareFilter.FromQuery("?by=line")));
        var picked = CompareFilter.FromQuery("?by=line&a=Silo");
        Assert.Equal(picked, CompareView.Opening(fleet, picked));
    }

    [Fact]
    public void The_same_group_against_itself_does_not_differ()
    {
        var view = CompareView.Of(Desk.Fleet(Line("Press", 1000)), [.. Recorded("Press", 30)], Terms,
            CompareFilter.FromQuery("?by=line&a=Press&b=Press"), Time);
        Assert.All(view.Rows, r => Assert.NotEqual("they differ", r.Verdict.ToString()));
        Assert.Equal(0, view.Rows[3].Difference!.Value.Value);
    }

    [Fact]
    public void A_period_takes_the_lives_that_were_fitted_in_it()
    {
        var side = new CompareSide("", new DateOnly(2026, 1, 1), new DateOnly(2026, 2, 1));
        var chain = new BookedChain(1, Desk.Card(), 3, []);
        BookedLife Fitted(string day) =>
            new(0, new Life(1, LifeEnd.StillRunning), true)
            {
                FittedAt = DateTimeOffset.Parse(day + "Z", System.Globalization.CultureInfo.InvariantCulture),
            };
        bool Holds(BookedLife life) => side.Holds(
            LifeGrouping.Line.Of(chain.CardOf(life)), CompareSide.All, life.FittedAt is { } at ? Time.DateOf(at) : null);
        string[] moments = ["2025-12-31T23:00", "2026-01-01T00:00", "2026-01-31T23:00", "2026-02-01T00:00"];
        Assert.Equal([false, true, true, false], moments.Select(d => Holds(Fitted(d))));
        Assert.False(Holds(new BookedLife(0, new Life(1, LifeEnd.StillRunning), true)));
        Assert.Equal("fitted 2026-01-01 to 2026-01-31", side.Said.ToString());
    }

    private static IEnumerable<BookedChain> Line(string line, double hours)
    {
        var chance = new Random(3);
        return Enumerable.Range(0, 20).Select(i =>
        {
            var life = hours * Math.Exp(0.1 * (2 * chance.NextDouble() - 1));
            return new BookedChain(i, Desk.Card($"{line}-{i}", line), 3,
            [
                new BookedLife(0, new Life(life, LifeEnd.ReachedLimit), FittingKnown: true)
                {
                    FittedAt = A.Now.AddDays(-100), EndedAt = A.Now.AddDays(-1), Removed = true, HoursRun = life,
                    LogRate = (Math.Log(3000 / life), 0.05),
                },
            ]);
        });
    }

    private static IEnumerable<RecordedForecast> Recorded(string line, int count) =>
        Enumerable.Range(0, count).Select(_ => Desk.Recorded(line: line));
}
