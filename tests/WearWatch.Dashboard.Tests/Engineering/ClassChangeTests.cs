using WearWatch.Chains;
using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Drivers;
using WearWatch.Learning;
using WearWatch.Plant.Costs;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Engineering;

/// <summary>What would halve the wear of a class. The fleet wears in proportion to its load, whatever its speed.</summary>
public sealed class ClassChangeTests
{
    private static readonly FleetChain[] Fleet =
        [.. Enumerable.Range(0, 60).Select(i => Loaded(0.3 + i % 7 * 0.1, 0.5 + i % 4 * 0.5))];

    private static readonly FleetModel Model =
        Assert.IsType<FleetTrainingOutcome.Trained>(FleetTraining.Train(Fleet, seed: 1)).Model;

    private static readonly ChainCard[] Heavy = [.. Fleet.Select(f => f.Card).Where(c => c.Duty.RelativeLoad > 0.85)];

    // Oracle: the rate is made as 0.4 load + nothing else, so that half the load is half the rate, and 0.3 of 0.9 is a third.
    [Fact]
    public void Half_the_load_halves_the_wear_and_the_fleet_shows_it_down_to_its_lightest_load()
    {
        var change = ClassChange.Of(Heavy, Model, ClassDriver.Load, toPercent: 50)!;
        Assert.Equal((Heavy.Length, Heavy.Length, 0), (change.Changed, change.OfClass, change.Outside));
        Assert.Equal(2, change.Rate.LifeFactor, 0.1);
        Assert.True(change.IsSeen);
        Assert.InRange(change.HalvesAtPercent!.Value, 47, 53);
        Assert.InRange(change.ShownToPercent!.Value, 33, 40);
        var view = new ClassChangeView([], true, change with { Rate = Weaker }, null, new ClassQuestion());
        Assert.EndsWith("of today's value the wear is halved.", view.Halving.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Speed_that_the_fleet_shows_without_effect_halves_nothing_and_the_page_says_so()
    {
        var asked = new ClassQuestion { Driver = ClassDriver.Speed, ToPercent = 50 };
        var change = ClassChange.Of(Heavy, Model, asked.Driver, asked.ToPercent)!;
        Assert.Null(change.HalvesAtPercent);
        Assert.Equal(1, change.Rate.LifeFactor, 0.1);
        var view = new ClassChangeView([], true, change with { Rate = new RateChange(0, 0.1, []) }, null, asked);
        Assert.StartsWith("The fleet shows no effect", view.Halving.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_recorded_or_would_not_change_has_no_answer()
    {
        Assert.Null(ClassChange.Of([Desk.Card(load: null)], Model, ClassDriver.Load, toPercent: 80));
        Assert.Null(ClassChange.Of([Desk.Card(dust: DustLevel.Clean)], Model, ClassDriver.Enclosure, toPercent: 80));
        Assert.Null(ClassChange.Of([Desk.Card()], Model, ClassDriver.OilInterval, toPercent: 80));
    }

    // By hand: 1,000 a year from 4 swaps; twice the life saves half, 500. The Poisson error of 4 is 2, half of them, so that the
    // 90 % interval is 500 +- 1.6449 * 500 / 2 = 500 +- 411.2. Once 1,000: 1,000 / 500 = 2 years, 1,000 / 88.8 = 11.3 at worst.
    [Fact]
    public void The_saving_has_the_error_of_few_swaps_and_of_the_regression_and_a_payback()
    {
        var change = new ClassChange(10, 10, new RateChange(-Math.Log(2), 0, []), 0);
        var year = new CostStatement { Swaps = 4, Chains = 600, Stops = 400, Hours = 9000 };
        var saving = ClassSaving.Of(change, year, once: 1000, eachYear: 0)!;
        Assert.Equal((1000, 500), (Math.Round(saving.CostNow, 9), Math.Round(saving.Saved, 9)));
        Assert.Equal(88.8, saving.Interval.Low, 0.1);
        Assert.Equal((2, 11.3), (Math.Round(saving.Years, 9), Math.Round(saving.YearsBetween.Worst, 1)));
        var unsure = ClassSaving.Of(change with { Rate = new RateChange(-Math.Log(2), 0.3, []) }, year, once: 0, eachYear: 0)!;
        Assert.True(unsure.Interval.High - unsure.Interval.Low > saving.Interval.High - saving.Interval.Low);
        Assert.Equal(double.PositiveInfinity, ClassSaving.Of(change, year, once: 0, eachYear: 500)!.Years);
        Assert.Null(ClassSaving.Of(change, new CostStatement { Hours = 9000 }, once: 0, eachYear: 0));
        Assert.Equal(500, ClassSaving.Of(change with { OfClass = 20 }, year, once: 0, eachYear: 0)!.CostNow, 9);
    }

    [Fact]
    public void The_question_survives_its_address()
    {
        var asked = new ClassQuestion
        {
            By = LifeGrouping.Line,
            Group = "Press & more",
            Driver = ClassDriver.OilInterval,
            ToPercent = 62.5,
            Once = 5000,
            EachYear = 120,
        };
        Assert.Equal(asked, ClassQuestion.FromQuery(asked.ToQuery()));
        Assert.Equal(new ClassQuestion(), ClassQuestion.FromQuery("?driver=colour&to=-4&once=x"));
    }

    private static RateChange Weaker { get; } = new(-0.3, 0.05, []);

    private static FleetChain Loaded(double load, double speed)
    {
        var card = Desk.Card(load: load);
        return new FleetChain(
            card with { Duty = card.Duty with { SpeedMetresPerSecond = speed } },
            [.. Enumerable.Range(1, 8)
                .Select(i => new Observation(500.0 * i, 0.2 + 0.4 * load * 0.5 * i + (i % 2 == 0 ? 0.01 : -0.01), 0.03, i - 1))]);
    }
}
