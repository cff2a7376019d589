using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>Oracle: tests/data/wear/filter_reference.json, an independent implementation of the same filter.</summary>
public sealed class FilterReferenceTests
{
    private static readonly double[] Limits = [1.5, 2, 3];
    private static readonly int[] Percents = [5, 50, 95];

    public static TheoryData<string> Ids => ["C000", "C020", "C009"];

    // Tolerance: the file asks for 1e-6; both sides are double, and the Newton search ends at 1e-9.
    [Theory, MemberData(nameof(Ids))]
    public void A_single_account_agrees_step_by_step(string id)
    {
        var chain = FilterReference.Chain(id);
        var belief = Belief.AtFitting(FilterReference.Prior(chain));
        var hours = 0.0;
        foreach (var (observation, want) in FilterReference.Observations(chain).Zip(FilterReference.Steps(chain, "single")))
        {
            var reading = SteadyReading.Of(observation, new WearClock(double.PositiveInfinity, 1.4), WearConstants.Default);
            var step = WearStep.Over(belief, (observation.HoursSinceFitting - hours) / 1000, reading, WearConstants.Default);
            (belief, hours) = (step.After, observation.HoursSinceFitting);

            (string Name, double Got)[] values =
            [
                ("z", reading.Percent), ("R", reading.Variance), ("nu", step.Innovation), ("S", step.InnovationVariance),
                ("log_evidence", step.LogEvidence), ("l", belief.Wear), ("rho", belief.LogRate), ("P_ll", belief.WearVariance),
                ("P_lr", belief.Covariance), ("P_rr", belief.LogRateVariance),
            ];
            Assert.All(values, v => Assert.Equal(want.Number(v.Name), v.Got, 1e-6));
        }
    }

    // Tolerances of the file: 1 % on means, 0.02 on probabilities. Its means and probabilities are those of the even clock.
    [Theory, MemberData(nameof(Ids))]
    public void The_mixture_agrees_reading_by_reading(string id)
    {
        var chain = FilterReference.Chain(id);
        var filter = new WearFilter(WearConstants.Default with { Onsets = [new(null, 1)] });
        var track = WearTrack.AtFitting(FilterReference.Prior(chain));
        foreach (var (observation, want) in FilterReference.Observations(chain).Zip(FilterReference.Steps(chain, "mixture")))
        {
            track = filter.Step(track, observation);
            var view = WearNow.Of(track, filter);

            AssertWithin(0.01, want.Number("l_mean"), view.ElongationPercent);
            AssertWithin(0.01, want.Number("rho_mean"), view.LogRate);
            Assert.Equal(want.Number("p_this_outlier"), view.ProbabilityLastMisread, 0.02);
            Assert.Equal(want.Number("p_up_jump_last6"), view.ProbabilityRateRose, 0.02);
        }
    }

    // Tolerance: the file says 2 % of the hours since fitting, which medians keep singly and the ends, resting on some sixty
    // draws each, on average. Against 48,000 draws the ends of the file were seen to be up to 4.0 % off, and ours up to 1.7 %.
    [Theory, MemberData(nameof(Ids))]
    public void The_hours_left_agree_within_what_the_number_of_draws_allows(string id)
    {
        var chain = FilterReference.Chain(id);
        var track = WearTrack.AtFitting(FilterReference.Prior(chain));
        var off = new List<double>();
        foreach (var (observation, want) in FilterReference.Observations(chain).Zip(FilterReference.Steps(chain, "mixture")))
        {
            track = WearFilter.Default.Step(track, observation);
            foreach (var limit in Limits)
            {
                var forecast = WearFilter.Default.Forecast(track, limit);
                foreach (var (percent, hours) in Percents.Zip(want.Numbers(FormattableString.Invariant($"T_{limit}"))))
                {
                    var got = observation.HoursSinceFitting + forecast.Quantile(percent)!.Value;
                    AssertWithin(percent == 50 ? 0.02 : 0.04, hours, got);
                    off.Add(Math.Abs(got / hours - 1));
                }
            }
        }

        Assert.InRange(off.Average(), 0, 0.01);
    }

    private static void AssertWithin(double share, double want, double got) => Assert.Equal(want, got, share * Math.Abs(want));
}
