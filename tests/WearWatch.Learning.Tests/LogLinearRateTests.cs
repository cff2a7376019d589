using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Learning.Tests;

public sealed class LogLinearRateTests
{
    private static readonly RateSample[] Samples =
    [
        .. from chain in SimulatedFleet.Chains
           let shown = ChainRate.Of(chain.Observations) as ChainRate.Shown
           where shown is not null
           select new RateSample(chain.Card, shown.LogRate, shown.StandardError)
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
            var penalty = j == 0 ? 0 : j < line.Design.FirstOrigin ? LogLinearRate.EffectPenalty : 1 / line.OriginVariances[0];
            Assert.Equal(penalty * line.Coefficients[j], pull[j], 1e-9 * sumWeights);
        }
    }

    // Oracle: the law that made the chains. A nominal 90 % interval that holds 0.86 to 0.96 of 1,000 further chains: four
    // binomial standard errors, and the error of a tau learned from 150.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_prior_s_interval_holds_as_many_further_chains_as_it_says(bool told)
    {
        var model = A.Training(A.Fleet(150, Law, seed: 3)).Model;
        Assert.InRange(ShareHeld(A.Fleet(1000, Law, seed: 4), chain => model.PriorFor(told
            ? chain.Card
            : chain.Card with { Duty = new Duty { Dust = chain.Card.Duty.Dust } })), 0.86, 0.96);
    }

    // Same oracle, ten fleets of forty chains pooled: the model knows less, and says so.
    [Fact]
    public void Small_fleets_say_how_little_they_teach()
    {
        var further = A.Fleet(200, Law, seed: 4);
        var shares = Enumerable.Range(100, 10).Select(seed =>
        {
            var model = A.Training(A.Fleet(40, Law, seed: seed)).Model;
            return ShareHeld(further, chain => model.PriorFor(chain.Card));
        });
        Assert.InRange(shares.Average(), 0.86, 0.94);
    }

    // Same oracle; the law has a step that only trees find, and the prior must become as narrow as they make it.
    [Fact]
    public void A_prior_with_trees_is_as_wide_as_what_they_leave()
    {
        static double Stepped(ChainCard card) =>
            Law(card) + (card.Duty is { Dust: DustLevel.Heavy, SpeedMetresPerSecond: > 1.8 } ? 1.2 : 0);
        var trained = A.Training(A.Fleet(600, Stepped, spread: 0.15));
        Assert.True(trained.Model.UsesTrees);
        Assert.InRange(ShareHeld(A.Fleet(1000, Stepped, spread: 0.15, seed: 4), c => trained.Model.PriorFor(c.Card)), 0.86, 0.97);
        Assert.True(trained.Model.PriorFor(A.Card()).VarianceLogRate < trained.Report.Tau * trained.Report.Tau);
    }

    [Fact]
    public void The_conformal_width_holds_ninety_of_a_hundred_further_chains()
    {
        var model = A.Training(A.Fleet(150, Law, seed: 5)).Model;
        var held = A.Fleet(1000, Law, seed: 6)
            .Count(chain => Math.Abs(Shown(chain).LogRate - model.PriorFor(chain.Card).MeanLogRate) < model.ConformalHalfWidth90);
        Assert.InRange(held, 860, 960);
    }

    [Fact]
    public void The_spread_between_like_chains_is_found() =>
        Assert.Equal(0.3, Math.Sqrt(LogLinearRate.Fit(SamplesOf(A.Fleet(400, Law, spread: 0.3))).TauSquared), 0.04);

    [Fact]
    public void Lines_that_do_not_differ_hardly_matter() =>
        Assert.InRange(LogLinearRate.Fit(SamplesOf(A.Fleet(400, Law, lines: true))).OriginVariances.Sum(), 0, 0.01);

    // A spread of less than the square root of 0.03 is not believed: no two chains are so alike.
    [Fact]
    public void A_fleet_that_wears_all_alike_still_leaves_room() =>
        Assert.InRange(
            A.Training(A.Fleet(60, _ => Math.Log(0.2), spread: 0)).Model.PriorFor(A.Card()).VarianceLogRate, 0.03, 0.06);

    [Fact]
    public void Cards_that_tell_nothing_teach_the_average()
    {
        var fleet = A.Fleet(60, Law).Select(chain => chain with { Card = new ChainCard { Name = "chain", PitchMm = 25.4 } })
            .ToArray();
        var trained = A.Training(fleet);
        var prior = trained.Model.PriorFor(A.Card(load: 3, speed: 9, lubrication: LubricationState.Dry));
        Assert.Equal(SamplesOf(fleet).Average(s => s.LogRate), prior.MeanLogRate, 0.05);
        Assert.Equal(trained.Report.MeanOnlyError, trained.Report.LineError, 0.02);
        Assert.InRange(prior.VarianceLogRate, 0.5, 2);
    }

    [Fact]
    public void Fewer_than_25_chains_teach_only_their_average()
    {
        var line = LogLinearRate.Fit(Samples[..24]);
        Assert.Equal(1, line.Design.Width);
        Assert.Equal(line.Expect(A.Card()), line.Expect(A.Card(load: 2)));
    }

    private static double ShareHeld(FleetChain[] further, Func<FleetChain, WearPrior> priorFor) => further.Average(chain =>
    {
        var prior = priorFor(chain);
        return Math.Abs(Shown(chain).LogRate - prior.MeanLogRate) < 1.645 * Math.Sqrt(prior.VarianceLogRate) ? 1.0 : 0.0;
    });

    private static ChainRate.Shown Shown(FleetChain chain) => Assert.IsType<ChainRate.Shown>(ChainRate.Of(chain.Observations));

    private static RateSample[] SamplesOf(FleetChain[] chains) =>
        [.. chains.Select(c => new RateSample(c.Card, Shown(c).LogRate, Shown(c).StandardError))];

    private static double Law(ChainCard card) =>
        Math.Log(0.1) + Math.Log(card.Duty.RelativeLoad!.Value / 0.5) + 0.6 * Math.Log(card.Duty.SpeedMetresPerSecond!.Value)
        + 0.5 * (int)card.Duty.Lubrication! + 0.3 * (int)card.Duty.Dust!;
}
