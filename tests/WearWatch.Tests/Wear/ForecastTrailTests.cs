using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class ForecastTrailTests
{
    private static readonly Reading[] Readings = A.Readings(0.3, 300, 900, 1500, 2100, 2700, 3300, 3900);

    private static readonly Assessment Assessment = Assessment.Of(
        A.Card(), Readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, DateTimeOffset.UnixEpoch);

    [Fact]
    public void Each_step_is_what_a_backtest_answers_with_the_readings_up_to_it()
    {
        var trail = ForecastTrail.Of(Assessment);
        Assert.Equal(Readings.Length, trail.Count);
        Assert.All(trail, (step, i) =>
        {
            var then = Backtest.Answer(A.Card(), Readings, [], WearPrior.Broad, Assessment.Limit.Percent, i + 1);
            Assert.Equal(step.Observation.HoursSinceFitting + then.EarlyHours, step.EarlyAtHours);
            Assert.Equal(step.Observation.HoursSinceFitting + then.MiddleHours, step.MiddleAtHours);
            Assert.Equal(step.Observation.HoursSinceFitting + then.LateHours, step.LateAtHours);
        });
    }

    [Fact]
    public void The_last_step_is_the_forecast_of_today() =>
        Assert.Equal(
            Assessment.HoursAtLastReading + Assessment.Forecast.MiddleHours, ForecastTrail.Of(Assessment)[^1].MiddleAtHours);

    [Fact]
    public void A_chain_without_readings_has_no_trail() =>
        Assert.Empty(ForecastTrail.Of(Assessment.Of(
            A.Card(), [], [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, DateTimeOffset.UnixEpoch)));
}
