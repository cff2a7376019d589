using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Tests.Supply;

public sealed class DemandTests
{
    // Oracle: the binomial distribution, which equal chains have. Five of 80 pitches at 0.3 each: mean 120, P(D
    // <= 80) = 0.7^5 + 5 0.3 0.7^4 = 0.52822.
    [Fact]
    public void Equal_chains_give_a_binomial_demand()
    {
        var demand = new Demand([.. Enumerable.Repeat((80, 0.3), 5)]);
        Assert.Equal(120, demand.Mean, 9);
        Assert.Equal((0, 80, 160), (demand.Quantile(0.16), demand.Quantile(0.52), demand.Quantile(0.53)));
    }

    // Oracle: all 2^8 outcomes of eight unequal chains, one by one.
    [Fact]
    public void Unequal_chains_give_what_all_outcomes_together_give()
    {
        (int Quantity, double Probability)[] chains =
            [(60, 0.1), (75, 0.9), (81, 0.5), (90, 0.33), (100, 0.7), (60, 0.2), (140, 0.05), (99, 0.6)];
        double Over(Func<int, double> of) => Enumerable.Range(0, 256).Sum(outcome =>
        {
            var (p, d) = (1.0, 0);
            for (var i = 0; i < 8; i++)
            {
                var needed = (outcome >> i & 1) == 1;
                p *= needed ? chains[i].Probability : 1 - chains[i].Probability;
                if (needed) d += chains[i].Quantity;
            }

            return p * of(d);
        });
        var demand = new Demand(chains);
        Assert.Equal(Over(d => d), demand.Mean, 9);
        Assert.Equal(Over(d => Math.Max(0, d - 250)), demand.ExpectedShortage(250), 9);
        Assert.True(Over(d => d <= demand.Quantile(0.9) ? 1 : 0) >= 0.9 && Over(d => d < demand.Quantile(0.9) ? 1 : 0) < 0.9);
    }

    [Fact]
    public void Without_chains_nothing_is_needed()
    {
        var demand = new Demand([]);
        Assert.Equal((0.0, 0, 0.0), (demand.Mean, demand.Quantile(0.9), demand.ExpectedShortage(0)));
    }
}
