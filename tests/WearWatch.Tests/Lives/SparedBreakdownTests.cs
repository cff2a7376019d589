using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

/// <summary>Oracles: sums by hand at the ends, and simulated lives between them.</summary>
public sealed class SparedBreakdownTests
{
    [Fact]
    public void A_chain_far_from_its_limit_spares_nothing_and_one_past_it_what_the_exponential_says()
    {
        Assert.Equal(0, SparedBreakdown.BeforeLimit(1.5, (Math.Log(0.2), 0.1), hoursAhead: 672, meanHoursPastLimit: 2000));
        Assert.Equal(1 - Math.Exp(-0.25), SparedBreakdown.PastLimit(500, 2000), 12);
        // A rate that is known: 0.1 % at 0.5 % per 1,000 h are 200 h, and 472 of 672 h lie past the limit.
        Assert.Equal(1 - Math.Exp(-472 / 2000.0), SparedBreakdown.BeforeLimit(0.1, (Math.Log(0.5), 0), 672, 2000), 12);
    }

    // Lives drawn by chance: 200,000, so that the share is sure to 0.002.
    [Fact]
    public void Between_them_it_is_the_share_of_simulated_chains_that_break()
    {
        var chance = new Random(7);
        var broken = Enumerable.Range(0, 200_000).Count(_ =>
        {
            var normal = Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
            var limit = 1000 * 0.3 / Math.Exp(Math.Log(0.5) + 0.4 * normal);
            return limit - 2000 * Math.Log(1 - chance.NextDouble()) <= 672;
        });
        Assert.Equal(broken / 200_000.0, SparedBreakdown.BeforeLimit(0.3, (Math.Log(0.5), 0.4), 672, 2000), 0.004);
    }
}
