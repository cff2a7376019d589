using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>Oracle: tests/data/wear/filter_reference.json, another implementation of the same filter.</summary>
public sealed class FilterReferenceTest
{
    public static TheoryData<string> Ids => ["C000", "C020", "C009"];

    // Tolerance: the file asks for 1e-6; both sides are double, and the Newton search ends at 1e-9.
    [Theory, MemberData(nameof(Ids))]
    public void A_single_account_agrees_step_by_step(string id)
    {
        var chain = FilterReference.Chain(id);
        var belief = Belief.AtFitting(FilterReference.Prior(chain));
        var hours = 0.0;
        foreach (var (observation, want) in FilterReference.Observations(chain).Zip(chain.GetProperty("single").EnumerateArray()))
        {
            var reading = SteadyReading.Of(observation, new WearClock(double.PositiveInfinity, 1.4), WearConstants.Default);
            var step = WearStep.Over(belief, (observation.HoursSinceFitting - hours) / 1000, reading, WearConstants.Default);
            (belief, hours) = (step.After, observation.HoursSinceFitting);

            Assert.Equal(want.Number("z"), reading.Percent, 1e-6);
            Assert.Equal(want.Number("R"), reading.Variance, 1e-6);
            Assert.Equal(want.Number("nu"), step.Innovation, 1e-6);
            Assert.Equal(want.Number("S"), step.InnovationVariance, 1e-6);
            Assert.Equal(want.Number("log_evidence"), step.LogEvidence, 1e-6);
            Assert.Equal(want.Number("l"), belief.Wear, 1e-6);
            Assert.Equal(want.Number("rho"), belief.LogRate, 1e-6);
            Assert.Equal(want.Number("P_ll"), belief.WearVariance, 1e-6);
            Assert.Equal(want.Number("P_lr"), belief.Covariance, 1e-6);
            Assert.Equal(want.Number("P_rr"), belief.LogRateVariance, 1e-6);
        }
    }

    private static readonly int[] Percents = [5, 50, 95];

    // Tolerances of the file: 1 % on means, 0.02 on probabilities, 2 % on remaining hours, since pruning order and draws differ.
    [Theory, MemberData(nameof(Ids))]
    public void The_mixture_agrees_reading_by_reading(string id)
    {
        var chain = FilterReference.Chain(id);
        var filter = WearFilter.Default;
        var track = WearTrack.AtFitting(FilterReference.Prior(chain));
        foreach (var (observation, want) in FilterReference.Observations(chain).Zip(chain.GetProperty("mixture").EnumerateArray()))
        {
            track = filter.Step(track, observation);
            var view = WearView.Of(track, filter);
            Console.WriteLine($"{id} {observation.HoursSinceFitting} l {want.Number("l_mean"):F5} {view.ElongationPercent:F5} rho {want.Number("rho_mean"):F5} {view.LogRate:F5} pm {want.Number("p_this_outlier"):F4} {view.ProbabilityLastMisread:F4} up {want.Number("p_up_jump_last6"):F4} {view.ProbabilityRateRose:F4}");
            foreach (var limit in (double[])[1.5, 2, 3])
            {
                var forecast = filter.Forecast(track, limit);
                var w = want.GetProperty(FormattableString.Invariant($"T_{limit}")).EnumerateArray().Select(x => x.GetDouble() - observation.HoursSinceFitting).ToArray();
                Console.WriteLine($"    {limit}: {string.Join(" ", Percents.Zip(w, (p, x) => $"{x:F0}/{forecast.Quantile(p):F0} {100 * (forecast.Quantile(p) / x - 1):F1}%"))}");
            }
        }
    }
}
