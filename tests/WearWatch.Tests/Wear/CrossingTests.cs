using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class CrossingTests
{
    private static readonly WearConstants Quiet =
        WearConstants.Default with { RateDrift = 1e-12, UnevenWear = 1e-12, JumpsPer1000Hours = 1e-9, Onsets = [new(null, 1)] };

    // Oracle: with nothing to change, hours are (L - l)/rate with a lognormal rate: quantiles by the normal distribution.
    [Theory]
    [InlineData(5, -1.6448536269514722)]
    [InlineData(50, 0)]
    [InlineData(95, 1.6448536269514722)]
    public void With_nothing_to_change_hours_are_lognormal(int percent, double z)
    {
        var prior = new WearPrior(Math.Log(0.25), 0.09, 0.5, 1e-9, $"sure of the start");

        var forecast = new WearFilter(Quiet).Forecast(WearTrack.AtFitting(prior), 3);

        Assert.Equal(1000 * 2.5 / 0.25 * Math.Exp(0.3 * z), forecast.Quantile(percent)!.Value, 0.003 * 10_000);
    }

    // Oracle: the same story told a hundred thousand times with other chances, step by step. Tolerance: 1,200 draws, see
    // docs/method.md.
    [Theory]
    [InlineData(0.4, 2.0)]
    [InlineData(0.1, 3.0)]
    public void With_all_that_may_change_quantiles_agree_with_a_plain_simulation(double deviation, double limit)
    {
        var prior = new WearPrior(Math.Log(0.3), deviation * deviation, 0.25, 0.1, $"test");
        var constants = WearConstants.Default with { Onsets = [new(null, 1)] };

        var forecast = new WearFilter(constants).Forecast(WearTrack.AtFitting(prior), limit);
        var told = Simulated(prior, limit, constants);

        foreach (var percent in (int[])[5, 50, 95])
            Assert.Equal(
                told[percent * told.Length / 100], forecast.Quantile(percent)!.Value, 0.05 * told[percent * told.Length / 100]);
    }

    [Fact]
    public void A_limit_that_the_belief_straddles_has_been_passed_with_its_probability()
    {
        var prior = new WearPrior(Math.Log(0.3), 0.01, 2.0, 0.1, $"test");

        var forecast = new WearFilter(Quiet).Forecast(WearTrack.AtFitting(prior), 2.0);

        Assert.Equal(0.5, forecast.ProbabilityPassed, 0.01);
        Assert.Equal(0, forecast.EarlyHours);
    }

    [Fact]
    public void Hours_that_have_gone_by_since_are_taken_off()
    {
        var track = WearTrack.AtFitting(WearPrior.Broad);
        var (then, later) = (WearFilter.Default.Forecast(track, 2), WearFilter.Default.Forecast(track, 2, hoursLater: 500));

        Assert.Equal(then.MiddleHours!.Value - 500, later.MiddleHours!.Value, 1e-9);
        Assert.Equal(then.ProbabilityWithin(500), later.ProbabilityPassed, 0.01);
    }

    [Fact]
    public void A_chain_that_hardly_wears_has_no_upper_limit_yet() =>
        Assert.Null(new WearFilter(Quiet).Forecast(WearTrack.AtFitting(new(Math.Log(0.002), 1, 0.2, 0.1, $"test")), 3).LateHours);

    /// <summary>Hours to the limit in small steps: drift of the rate, uneven wear, jumps up by about 2.8 as they come.</summary>
    private static double[] Simulated(WearPrior prior, double limit, WearConstants constants)
    {
        var chance = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        const double Step = 0.1;
        var hours = new double[20_000];
        for (var i = 0; i < hours.Length; i++)
        {
            var logRate = prior.MeanLogRate + Math.Sqrt(prior.VarianceLogRate) * Normal();
            var wear = prior.MeanStartPercent + prior.StandardDeviationStartPercent * Normal();
            var jump = -Math.Log(1 - chance.NextDouble()) / constants.JumpsPer1000Hours;
            double time = 0;
            while (wear < limit)
            {
                logRate += Math.Sqrt(constants.RateDrift * Step) * Normal();
                if (time < jump && jump <= time + Step)
                    logRate += constants.FutureJump + constants.FutureJumpDeviation * Normal();
                wear += Math.Exp(logRate) * (Step + Math.Sqrt(constants.UnevenWear * Step) * Normal());
                time += Step;
            }

            hours[i] = 1000 * (time - Step / 2);
        }

        Array.Sort(hours);
        return hours;
    }
}
