using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Costs;
using WearWatch.Lives;
using WearWatch.Planning.Costs;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Tests.Engineering;

/// <summary>
/// Oracle: sums done by hand. A pitch costs 5, a stopped hour 100: a swap stops the line for 100, a breakdown costs 8 x 100 +
/// 1,500.
/// </summary>
public sealed class CostViewTests
{
    private static readonly CostTerms Terms = new(
        new PlanningCosts { StoppedLinePerHour = 100, StopHours = 1, BreakdownHours = 8, BreakdownExtra = 1500 },
        new Dictionary<string, double> { ["16B-1"] = 5 }, UsualPitchPrice: 3, SprocketPrice: 200);

    private static readonly CostPeriod Year = CostPeriod.YearUpTo(A.Now);

    [Fact]
    public void A_chain_swapped_at_half_of_its_limit_throws_half_of_its_life_away()
    {
        var sheet = CostStatement.Of(Chain(), Life(1000, LifeEnd.ReplacedBefore, lastPercent: 1.5), Terms, Year);
        Assert.Equal((1, 0, 500.0, 100.0, 0.0), (sheet.Swaps, sheet.Broke, sheet.Chains, sheet.Stops, sheet.Breakdowns));
        Assert.Equal((250.0, 1000.0), (sheet.UnusedPrice, sheet.UnusedHours));
        Assert.Equal((1, 0.0, 0.0), (sheet.Early, sheet.Spared, sheet.Saved)); // half of its limit was left
        Assert.Equal(600, sheet.PerThousandHours);
    }

    [Fact]
    public void A_chain_run_past_its_limit_takes_its_sprockets_along_and_one_that_broke_costs_the_breakdown()
    {
        var sheet = CostStatement.Of(
            Chain(), Life(2000, LifeEnd.ReachedLimit, lastPercent: 3.2) with { HoursRun = 2100, Broke = true }, Terms, Year);
        Assert.Equal(
            (500.0, 200.0, 0.0, 2300.0, 0.0), (sheet.Chains, sheet.Sprockets, sheet.Stops, sheet.Breakdowns, sheet.UnusedPrice));
        Assert.Equal((1, 0, 0.0), (sheet.Broke, sheet.Early, sheet.Spared));
    }

    // Past its limit and not broken: 28 days of running at a mean of 2,000 h to failure.
    [Fact]
    public void A_swap_past_the_limit_spares_a_breakdown_by_its_probability()
    {
        var sheet = CostStatement.Of(
            Chain(), Life(2000, LifeEnd.ReachedLimit, lastPercent: 3.2) with { HoursRun = 2100, FittedAt = null }, Terms, Year);
        var spared = 1 - Math.Exp(-28 * 24 / Terms.Costs.MeanHoursToFailurePastLimit);
        Assert.Equal((spared, 2200 * spared), (sheet.Spared, sheet.Saved));
        Assert.True(sheet.SparedInterval.Contains(spared));
        Assert.InRange(sheet.SparedInterval.High, spared, 1);
    }

    // Fitted a year and a half before the end of the year, taken off half a year before it: half of its hours lie in the year.
    [Fact]
    public void Hours_go_to_the_years_in_which_they_were_run()
    {
        var life = Life(2000, LifeEnd.ReplacedBefore, 2) with
        {
            FittedAt = Year.From.AddDays(-100),
            EndedAt = Year.From.AddDays(100),
        };
        Assert.Equal(1000, CostStatement.Of(Chain(), life, Terms, Year).Hours, 1e-6);
        Assert.Equal(1000, CostStatement.Of(Chain(), life, Terms, Year.YearBefore).Hours, 1e-6);
        Assert.Equal(0, CostStatement.Of(Chain(), life, Terms, Year.YearBefore).Swaps);
    }

    [Fact]
    public void A_chain_that_still_runs_costs_nothing_yet_and_a_day_nobody_told_is_in_no_year()
    {
        Assert.Equal((0.0, 1000.0),
            (CostStatement.Of(Chain(), Life(1000, LifeEnd.StillRunning, 1) with { Removed = false }, Terms, Year).Total, 1000.0));
        Assert.Equal(
            new CostStatement(),
            CostStatement.Of(Chain(), Life(1000, LifeEnd.ReplacedBefore, 1) with { EndedAt = null }, Terms, Year));
    }

    [Fact]
    public void Groups_add_up_to_all_and_the_dearest_comes_first()
    {
        var dear = new BookedChain(1, Desk.Card("K-1", "Press"), 3, [Life(1000, LifeEnd.ReplacedBefore, 1.5)]);
        var cheap = new BookedChain(2, Desk.Card("K-2", "Drying"), 3, [Life(4000, LifeEnd.ReplacedBefore, 2.9)]);
        var costs = FleetCosts.Of(Desk.Fleet([dear, cheap]), Terms, card => LifeGrouping.Line.Of(card), A.Now,
            new Dictionary<int, (OilGiven, OilGiven)> { [2] = (new(7, 350), new(3, 0)) });
        var view = new CostView(costs, LifeGrouping.Line);
        Assert.Equal(["Press", "Drying"], view.Groups.Select(g => g.Group));
        Assert.Equal(
            (5000.0, 7, 350.0, 3), (view.All.Year.Hours, view.All.Year.Oilings, view.All.Year.OilMl, view.All.Before.Oilings));
        Assert.Equal(view.All.Year.Total, view.Groups.Sum(g => g.Year.Total));
        Assert.Contains("of the year before nothing is known", view.InWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_assumption_is_told_with_its_value() =>
        Assert.Contains(("A breakdown stops its line for", "8 h"), CostWords.Assumptions(Terms).Select(a =>
            (a.What.ToString(), a.Value.ToString())));

    private static BookedChain Chain() => new(1, Desk.Card() with { Pitches = 100 }, 3, []);

    private static BookedLife Life(double hours, LifeEnd end, double lastPercent) =>
        new(0, new Life(hours, end), FittingKnown: true)
        {
            FittedAt = A.Now.AddDays(-200),
            EndedAt = A.Now.AddDays(-10),
            Removed = true,
            HoursRun = hours,
            LastPercent = lastPercent,
        };
}
