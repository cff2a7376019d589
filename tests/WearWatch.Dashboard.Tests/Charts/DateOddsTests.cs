using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Charts;

public sealed class DateOddsTests
{
    [Fact]
    public void The_chances_add_up_to_one()
    {
        var odds = Odds(A.Percentiles(200, 9000));
        Assert.Equal(1, odds.Already + odds.Later + odds.Bins.Sum(b => b.Probability), 9);
    }

    [Fact]
    public void An_even_forecast_over_ten_weeks_gives_even_weeks()
    {
        // Round the clock: 168 h a week. Percentile p lies p/100 of the way through 1,680 h, so a whole week holds 10 %.
        var odds = Odds([.. Enumerable.Range(1, 99).Select(p => 16.8 * p)]);
        Assert.Equal("week", odds.Unit.ToString());
        Assert.All(odds.Bins.Skip(1).Take(8), b => Assert.Equal(0.1, b.Probability, 3));
    }

    [Fact]
    public void Holidays_push_the_chance_to_when_the_line_runs()
    {
        var stopped = Enumerable.Range(0, 7).Select(d => new DateOnly(2026, 11, 30).AddDays(d));
        var calendar = new ProductionCalendar([], holidays: stopped);
        var odds = Odds([.. Enumerable.Range(1, 99).Select(p => 16.8 * p)], calendar);
        // The forecast is known at whole percents: up to one of them may be spread over the stop.
        Assert.InRange(odds.Bins[1].Probability, 0, 0.01);
        Assert.Equal(0.1, odds.Bins[2].Probability, 1.5e-2);
    }

    [Fact]
    public void What_has_been_run_since_the_reading_is_taken_off()
    {
        var odds = DateOdds.Of(
            Forecast([.. Enumerable.Range(1, 99).Select(p => 10.0 * p)]), 200, ProductionCalendar.AlwaysRunning, A.Time());
        Assert.Equal(0.2, odds.Already, 3);
    }

    [Fact]
    public void Beyond_the_horizon_is_later()
    {
        var odds = Odds([.. Enumerable.Range(1, 99).Select(p => p <= 60 ? 100.0 * p : WearForecast.HorizonHours)]);
        Assert.InRange(odds.Later, 0.35, 0.45);
    }

    [Theory]
    [InlineData(2_000, "week")]
    [InlineData(9_000, "month")]
    [InlineData(30_000, "quarter")]
    [InlineData(80_000, "year")]
    public void The_stretch_suits_the_span(double lastHours, string unit) =>
        Assert.Equal(unit, Odds(A.Percentiles(100, lastHours)).Unit.ToString());

    private static DateOdds Odds(IReadOnlyList<double> percentiles, ProductionCalendar? calendar = null) =>
        DateOdds.Of(Forecast(percentiles), 0, calendar ?? ProductionCalendar.AlwaysRunning, A.Time());

    private static WearForecast Forecast(IReadOnlyList<double> percentiles) =>
        new() { LimitPercent = 3, ProbabilityPassed = 0, PercentilesHours = percentiles };
}
