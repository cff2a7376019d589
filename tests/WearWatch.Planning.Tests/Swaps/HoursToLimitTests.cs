using CsCheck;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Swaps;

public sealed class HoursToLimitTests
{
    private static HoursToLimit Left(double median = 1000, double spread = 0.4, double since = 0) =>
        new(A.Forecast(median, spread), since);

    // Oracle: the integral over the distribution's inverse by the midpoint rule with 200,000 steps, a slow way that shares no
    // formula.
    private static double Midpoints(HoursToLimit left, Func<double, double> of) =>
        Enumerable.Range(0, 200_000).Average(i => of(left.At((i + 0.5) / 200_000)));

    [Theory]
    [InlineData(0)]
    [InlineData(300)]
    [InlineData(1000)]
    [InlineData(2500)]
    public void Each_expectation_is_the_integral_over_the_distribution(double hours)
    {
        var left = Left();
        Assert.Equal(Midpoints(left, t => t <= hours ? 1 : 0), left.ProbabilityPast(hours), 5e-5);
        Assert.Equal(
            Midpoints(left, t => t < hours ? 1 - Math.Exp(-(hours - t) / 800) : 0), left.ProbabilityFailed(hours, 800), 1e-6);
        Assert.Equal(Midpoints(left, t => t > hours ? (t - hours) / (5000 + t) : 0), left.UnusedLife(hours, 5000), 1e-6);
    }

    [Fact]
    public void A_limit_that_is_certain_is_passed_at_its_hour()
    {
        var left = new HoursToLimit(A.Certain(1000), 0);
        Assert.Equal((0.01 * 999 / 1000, 1.0), (left.ProbabilityPast(999), left.ProbabilityPast(1000)));
    }

    [Fact]
    public void A_chain_past_its_limit_has_no_life_left_to_waste()
    {
        var left = new HoursToLimit(A.Certain(0), 0);
        Assert.Equal((1.0, 0.0), (left.ProbabilityPast(0), left.UnusedLife(0, 4000)));
        Assert.Equal(1 - Math.Exp(-1), left.ProbabilityFailed(2000, 2000), 12);
    }

    [Fact]
    public void A_forecast_without_an_upper_limit_still_has_costs()
    {
        var open = A.Forecast() with { PercentilesHours = [.. Enumerable.Range(1, 99).Select(p => p > 90 ? 1e6 : p * 50.0)] };
        var left = new HoursToLimit(open, 0);
        Assert.InRange(left.UnusedLife(0, 100), 0.5, 1);
        Assert.InRange(left.ProbabilityFailed(1e5, 2000), 0.85, 0.95);
    }

    [Fact]
    public void Hours_run_since_the_last_reading_are_taken_off() =>
        Assert.Equal(Left().ProbabilityPast(1200), Left(since: 200).ProbabilityPast(1000), 3);

    [Fact]
    public void Later_is_never_safer_and_never_wastes_more() =>
        Gen.Select(Gen.Double[10, 20000], Gen.Double[0.02, 1.5], Gen.Double[0, 30000], Gen.Double[0, 5000])
            .Sample((median, spread, hours, more) =>
        {
            var left = Left(median, spread);
            Assert.True(left.ProbabilityPast(hours + more) >= left.ProbabilityPast(hours) - 1e-12);
            Assert.True(left.ProbabilityFailed(hours + more, 2000) >= left.ProbabilityFailed(hours, 2000) - 1e-9);
            Assert.True(left.UnusedLife(hours + more, 1000) <= left.UnusedLife(hours, 1000) + 1e-9);
            Assert.InRange(left.ProbabilityFailed(hours, 2000), -1e-12, left.ProbabilityPast(hours) + 1e-9);
        }, iter: 300);
}
