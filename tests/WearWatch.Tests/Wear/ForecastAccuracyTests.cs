using WearWatch.Chains;
using WearWatch.Trends;

namespace WearWatch.Tests.Wear;

/// <summary>
/// Oracle: the true crossing hours of 200 simulated chains (tests/data/SOURCES.md). The bars are what an independent
/// implementation reached on 600 other chains, with about two standard errors of a set of 200.
/// </summary>
public sealed class ForecastAccuracyTests
{
    private static readonly Lazy<ForecastScore[]> Scores = new(() =>
    {
        var fleet = RecordedFleet.Load("fleet-learning");
        var prior = DutyPrior.Learn(fleet.Cards.Select(c => (c, fleet.Observations(c))));
        return ForecastScore.Of(fleet, "wear/fleet", prior.For);
    });

    [Theory]
    [InlineData(3.0, 0.25, 0.21, 0.63, 0.36)]
    [InlineData(3.0, 0.50, 0.17, 0.68, 0.29)]
    [InlineData(3.0, 0.75, 0.235, 0.54, 0.255)]
    [InlineData(3.0, 0.90, 0.38, 0.36, 0.20)]
    [InlineData(2.0, 0.25, 0.205, 0.60, 0.385)]
    [InlineData(2.0, 0.50, 0.155, 0.70, 0.265)]
    [InlineData(2.0, 0.75, 0.16, 0.67, 0.175)]
    [InlineData(2.0, 0.90, 0.245, 0.49, 0.11)]
    [InlineData(1.5, 0.25, 0.24, 0.52, 0.42)]
    [InlineData(1.5, 0.50, 0.185, 0.65, 0.32)]
    [InlineData(1.5, 0.75, 0.19, 0.60, 0.205)]
    [InlineData(1.5, 0.90, 0.32, 0.38, 0.13)]
    public void At_every_limit_and_age_forecasts_are_near_seldom_late_and_honest(
        double limit, double share, double medianError, double withinQuarter, double late)
    {
        ForecastScore[] cell = [.. Scores.Value.Where(s => s.LimitPercent == limit && s.LifeShare == share)];

        Assert.True(cell.Length >= 199);
        Assert.InRange(Median.Of([.. cell.Select(s => Math.Abs(s.RelativeError))]), 0, medianError);
        Assert.InRange(Share(cell, s => Math.Abs(s.RelativeError) <= 0.25), withinQuarter, 1);
        Assert.InRange(Share(cell, s => s.IsLateWarning), 0, late);
        Assert.InRange(Share(cell, s => s.Covers), 0.80, 0.98);
        Assert.InRange(Share(cell, s => s.Early > s.TrueHours), 0, 0.14);
    }

    [Fact]
    public void Nine_of_ten_bands_hold_and_one_in_twenty_early_ends_is_late()
    {
        Assert.InRange(Share(Scores.Value, s => s.Covers), 0.865, 0.945);
        Assert.InRange(Share(Scores.Value, s => s.Early > s.TrueHours), 0, 0.07);
        Assert.InRange(Share(Scores.Value, s => s.Late < s.TrueHours), 0, 0.09);
    }

    // Chains of 120 pitches whose take-up holds 1.5 %: 0.9 pitches of travel, by geometry. Nine of ten bands are to hold.
    [Fact]
    public void The_date_of_shortening_covers_as_often_as_it_says()
    {
        var card = new ChainCard
        {
            Name = "simulated",
            PitchMm = 25.4,
            Pitches = 120,
            TakeUpTravelMm = 0.9 * 25.4,
        };
        var end = LimitRules.For(card).TakeUp!;
        Assert.Equal((TakeUpTask.Shorten, 1.5), (end.Task, Math.Round(end.Percent, 9)));
        ForecastScore[] shortened = [.. Scores.Value.Where(s => s.LimitPercent == end.Percent)];

        Assert.True(shortened.Length >= 790);
        Assert.InRange(Share(shortened, s => s.Covers), 0.85, 0.95);
    }

    private static double Share(ForecastScore[] scores, Func<ForecastScore, bool> holds) =>
        (double)scores.Count(holds) / scores.Length;
}
