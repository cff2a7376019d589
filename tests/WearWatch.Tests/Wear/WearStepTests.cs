using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class WearStepTests
{
    private static readonly WearConstants Constants = WearConstants.Default;

    /// <summary>
    /// A vague, a middling and a sharp belief, over a short and a long time, with a reading as expected and one that is off.
    /// </summary>
    public static TheoryData<double, double, double, double> Cases => new()
    {
        { 0.25, 1.0, 0.5, 0.2 }, { 0.25, 0.6, 1.0, 0.1 }, { 0.5, 0.3, 1.0, -0.15 }, { 1.2, 0.15, 0.4, 0.05 },
        { 2.0, 0.1, 2.0, -0.1 },
    };

    // Oracle: Bayes' rule summed over a grid of rate and wear, which shares nothing with the Newton search. Tolerances: the peak
    // by the spacing of the grid; width and evidence by what a normal curve misses of a skewed one, most for the vaguest belief.
    [Theory, MemberData(nameof(Cases))]
    public void The_step_finds_the_peak_that_a_grid_of_all_rates_and_wears_has(
        double wear, double deviation, double thousandHours, double off)
    {
        var before = new Belief(wear, Math.Log(0.3), 0.0025, 0.2 * 0.05 * deviation, deviation * deviation);
        var reading = new SteadyReading(wear + 0.3 * thousandHours * Math.Exp(off), 0.0016, 0);

        var step = WearStep.Over(before, thousandHours, reading, Constants);
        var (peakRate, wearAtPeak, rateDeviation, logEvidence) = OnGrid(before, thousandHours, reading);

        Assert.Equal(peakRate, step.After.LogRate, 0.011 * deviation);
        Assert.Equal(wearAtPeak, step.After.Wear, 0.003);
        Assert.Equal(rateDeviation, Math.Sqrt(step.After.LogRateVariance), 0.25 * rateDeviation);
        Assert.Equal(logEvidence, step.LogEvidence, 0.15);
    }

    [Fact]
    public void Two_readings_at_the_same_hours_agree_with_one_of_their_mean()
    {
        var before = new Belief(0.5, -1.2, 0.02, 0.01, 0.3);
        var (first, second) = (new SteadyReading(0.52, 0.004, 0), new SteadyReading(0.58, 0.004, 0));

        var twice = WearStep.Over(WearStep.Over(before, 0, first, Constants).After, 0, second, Constants).After;
        var once = WearStep.Over(before, 0, new SteadyReading(0.55, 0.002, 0), Constants).After;

        Assert.Equal(once.Wear, twice.Wear, 1e-12);
        Assert.Equal(once.LogRate, twice.LogRate, 1e-12);
        Assert.Equal(once.WearVariance, twice.WearVariance, 1e-12);
        Assert.Equal(once.LogRateVariance, twice.LogRateVariance, 1e-12);
    }

    [Fact]
    public void No_reading_makes_a_chain_heal()
    {
        var after = WearStep.Over(new Belief(1, -1.5, 0.001, 0, 0.2), 1, new SteadyReading(0.2, 0.001, 0), Constants).After;

        Assert.True(Math.Exp(after.LogRate) > 0);
        Assert.True(after is { WearVariance: > 0, LogRateVariance: > 0 });
    }

    [Fact]
    public void Forward_without_a_reading_grows_and_grows_less_sure()
    {
        var before = new Belief(1, Math.Log(0.2), 0.001, 0.002, 0.05);

        var after = WearStep.Forward(before, 2, Constants);

        // Mean of a lognormal rate with the drift of two thousand hours in it: 1 + 2 x 0.2 exp((0.05 + 2 x 0.004)/2).
        Assert.Equal(1 + 0.4 * Math.Exp(0.029), after.Wear, 1e-12);
        Assert.Equal(0.058, after.LogRateVariance, 1e-12);
        Assert.True(after.WearVariance > before.WearVariance && after.Covariance > before.Covariance);
        Assert.Equal(before, WearStep.Forward(before, 0, Constants));
    }

    private static (double PeakRate, double WearAtPeak, double RateDeviation, double LogEvidence) OnGrid(
        Belief before, double thousandHours, SteadyReading reading)
    {
        const int Points = 1200;
        var c = before.LogRateVariance + Constants.RateDrift * thousandHours;
        var a = before.WearVariance + Constants.UnevenWear * thousandHours * Math.Exp(2 * before.LogRate + Math.Min(c, 2));
        var wearDeviation = Math.Sqrt(a - before.Covariance * before.Covariance / c);
        double[] normal = [.. Enumerable.Range(0, Points).Select(i => -6 + 12.0 * (i + 0.5) / Points)];
        double sum = 0, rate = 0, rate2 = 0;
        (double Weight, double Rate, double Wear) peak = default;
        foreach (var z in normal)
        {
            var r = before.LogRate + z * Math.Sqrt(c);
            var expected = before.Wear + before.Covariance / c * (r - before.LogRate) + thousandHours * Math.Exp(r);
            double weight = 0, wear = 0;
            foreach (var y in normal)
            {
                var l = expected + y * wearDeviation;
                var cell = Math.Exp(-0.5 * (z * z + y * y + (reading.Percent - l) * (reading.Percent - l) / reading.Variance));
                weight += cell;
                wear += cell * l;
            }

            if (weight > peak.Weight) peak = (weight, r, wear / weight);
            sum += weight;
            rate += weight * r;
            rate2 += weight * r * r;
        }

        var mean = rate / sum;
        var density = sum * (12.0 / Points) * (12.0 / Points) / (2 * Math.PI) / Math.Sqrt(2 * Math.PI * reading.Variance);
        return (peak.Rate, peak.Wear, Math.Sqrt(rate2 / sum - mean * mean), Math.Log(density));
    }
}
