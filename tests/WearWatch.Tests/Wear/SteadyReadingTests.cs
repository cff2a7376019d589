using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class SteadyReadingTests
{
    private static readonly WearClock Even = new(double.PositiveInfinity, 1.4);

    // docs/method.md with A 0.2, s_A 0.08, T_r 35, kappa 1.03, loc 0.01, by hand: x = exp(-1) = 0.367879 at 35 h.
    [Fact]
    public void In_the_run_in_the_rest_of_it_is_added_with_its_uncertainty()
    {
        var reading = SteadyReading.Of(new Observation(35, 0.30, 0.04, 0), Even, WearConstants.Default);

        Assert.Equal(0.30 + 0.0735759, reading.Percent, 1e-6);
        Assert.Equal(0.0412 * 0.0412 + 0.003 * 0.003 + 0.0294304 * 0.0294304 + 0.0294304 * 0.0294304, reading.Variance, 1e-7);
    }

    [Fact]
    public void After_the_run_in_a_reading_is_what_it_is()
    {
        var reading = SteadyReading.Of(new Observation(2000, 1.5, 0.04, 0), Even, WearConstants.Default);

        Assert.Equal(1.5, reading.Percent, 1e-12);
        Assert.Equal(0.0412 * 0.0412 + 0.015 * 0.015, reading.Variance, 1e-12);
        Assert.Equal(0, reading.LogJacobian);
    }

    [Fact]
    public void On_a_clock_that_runs_scatter_shrinks_as_the_clock_does()
    {
        var observation = new Observation(9000, 2.9, 0.04, 0);
        var (even, bent) = (SteadyReading.Of(observation, Even, WearConstants.Default),
            SteadyReading.Of(observation, new(2.4, 1.4), WearConstants.Default));

        Assert.Equal(-0.7, bent.LogJacobian, 1e-12);
        Assert.Equal(even.Variance * Math.Exp(-1.4), bent.Variance, 1e-12);
        Assert.Equal(2.4 + (1 - Math.Exp(-0.7)) / 1.4, bent.Percent, 1e-12);
    }
}
