using WearWatch.Chains;

namespace WearWatch.Learning.Tests;

public sealed class LogLinearRateTests
{
    private static readonly RateSample[] Samples =
    [
        .. from chain in SimulatedFleet.UndisturbedChains
           let shown = ChainRate.Of(chain.Observations) as ChainRate.Shown
           where shown is not null
           select new RateSample(chain.Card, shown.LogRate, shown.StandardError, shown.StartPercent)
    ];

    // Oracle: the definition of weighted ridge regression: at its minimum the weighted residuals' pull on a column equals the
    // penalty's. 1e-9 of the sum of the weights: rounding of sums over 157 rows.
    [Fact]
    public void At_the_solution_residuals_and_penalty_pull_alike()
    {
        var line = LogLinearRate.Fit(Samples);
        var pull = new double[line.Design.Width];
        double sumWeights = 0;
        foreach (var sample in Samples)
        {
            var weight = 1 / (sample.StandardError * sample.StandardError + line.TauSquared);
            sumWeights += weight;
            var row = line.Design.Row(sample.Card);
            for (var j = 0; j < row.Length; j++) pull[j] += weight * row[j] * (sample.LogRate - line.Expect(sample.Card));
        }

        for (var j = 0; j < pull.Length; j++)
        {
            var penalty = j == 0 ? 0 : j < line.Design.FirstLine ? LogLinearRate.EffectPenalty : 1 / line.LineVariance;
            Assert.Equal(penalty * line.Coefficients[j], pull[j], 1e-9 * sumWeights);
        }
    }

    // Oracle: the law that made the chains. A nominal 90 % interval that holds 0.86 to 0.94 of 1,000 further chains: four binomial
    // standard errors, and the error of a tau learned from 150.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_prior_s_interval_holds_as_many_further_chains_as_it_says(bool told)
    {
        var trained = A.Training(A.Fleet(150, Law, seed: 3)).Model;
        var held = A.Fleet(1000, Law, seed: 4).Count(chain =>
        {
            var card = told ? chain.Card : chain.Card with { Duty = new Duty { Dust = chain.Card.Duty.Dust } };
            var prior = trained.PriorFor(card);
            var rate = (ChainRate.Shown)ChainRate.Of(chain.Observations);
            return Math.Abs(rate.LogRate - prior.MeanLogRate) < 1.645 * Math.Sqrt(prior.VarianceLogRate);
        });
        Assert.InRange(held, 860, 960);
    }

    [Fact]
    public void The_conformal_width_holds_ninety_of_a_hundred_further_chains()
    {
        var trained = A.Training(A.Fleet(150, Law, seed: 5)).Model;
        var held = A.Fleet(1000, Law, seed: 6).Count(chain => Math.Abs(
            ((ChainRate.Shown)ChainRate.Of(chain.Observations)).LogRate - trained.PriorFor(chain.Card).MeanLogRate) < trained.ConformalHalfWidth90);
        Assert.InRange(held, 860, 960);
    }

    [Fact]
    public void The_spread_between_like_chains_is_found() =>
        Assert.Equal(0.3, Math.Sqrt(LogLinearRate.Fit(SamplesOf(A.Fleet(400, Law, spread: 0.3))).TauSquared), 0.04);

    [Fact]
    public void Lines_that_do_not_differ_hardly_matter() =>
        Assert.InRange(LogLinearRate.Fit(SamplesOf(A.Fleet(400, Law, lines: true))).LineVariance, 0, 0.01);

    [Fact]
    public void Fewer_than_25_chains_teach_only_their_average()
    {
        var line = LogLinearRate.Fit(Samples[..24]);
        Assert.Equal(1, line.Design.Width);
        Assert.Equal(line.Expect(A.Card()), line.Expect(A.Card(load: 2)));
    }

    private static RateSample[] SamplesOf(FleetChain[] chains) =>
    [
        .. chains.Select(c => (c.Card, Rate: (ChainRate.Shown)ChainRate.Of(c.Observations)))
            .Select(c => new RateSample(c.Card, c.Rate.LogRate, c.Rate.StandardError, c.Rate.StartPercent))
    ];

    private static double Law(ChainCard card) =>
        Math.Log(0.1) + Math.Log(card.Duty.RelativeLoad!.Value / 0.5) + 0.6 * Math.Log(card.Duty.SpeedMetresPerSecond!.Value)
        + 0.5 * (int)card.Duty.Lubrication! + 0.3 * (int)card.Duty.Dust!;
}
