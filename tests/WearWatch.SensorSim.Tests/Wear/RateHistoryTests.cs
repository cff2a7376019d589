using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Wear;

namespace WearWatch.SensorSim.Tests.Wear;

public sealed class RateHistoryTests
{
    [Fact]
    public void Without_chance_the_rate_is_constant()
    {
        var rate = A.Rate(0.3);

        Assert.Equal(0.3, rate.RateAt(0), 1e-12);
        Assert.Equal(0.3, rate.RateAt(40_000), 1e-12);
        Assert.Equal(12, rate.WearAt(40_000), 1e-9);
    }

    [Fact]
    public void A_change_takes_effect_at_its_hour_even_on_the_edge_of_a_block()
    {
        foreach (var at in (double[])[249, 250, 251, 1000])
        {
            var rate = A.Rate(0.2, change: new RateStep(at, 2.5));
            Assert.Equal(0.2, rate.RateAt(at - 0.1), 1e-12);
            Assert.Equal(0.5, rate.RateAt(at), 1e-12);
            Assert.Equal(0.2e-3 * at + 0.5, rate.WearAt(at + 1000), 1e-12);
        }
    }

    // Oracle: independent steps add their variances, so after 10,000 h the variance of ln(rate) is 0.04. The standard error
    // of a variance from 2,000 chains is 3.2 %; four of them are allowed.
    [Fact]
    public void The_log_rate_walks_with_the_variance_it_says()
    {
        var logs = Enumerable.Range(0, 2_000)
            .Select(seed => Math.Log(new RateHistory(1, Chance.For(seed, "walk")).RateAt(10_000))).ToArray();

        Assert.InRange(logs.Average(x => x * x), 0.04 * 0.87, 0.04 * 1.13);
        Assert.InRange(logs.Average(), -0.018, 0.018);
    }

    [Fact]
    public void Hours_to_a_wear_turn_back_into_that_wear()
    {
        var rate = new RateHistory(0.2, Chance.For(5, "there and back"), new RateStep(3_210, 2));

        foreach (var wear in (double[])[0.001, 0.5, 0.642, 1, 2.9])
            Assert.Equal(wear, rate.WearAt(rate.HoursTo(wear)), 1e-12);
    }
}
