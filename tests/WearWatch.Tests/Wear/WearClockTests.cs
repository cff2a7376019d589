using CsCheck;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class WearClockTests
{
    private static readonly Gen<(double Onset, double Gamma, double Percent)> Cases =
        Gen.Select(Gen.Double[1.5, 3.5], Gen.Double[0.5, 2], Gen.Double[-0.5, 7]).Select((o, g, p) => (o, g, p));

    // Tolerance: near the end of the scale elongation is the logarithm of a small difference.
    [Fact]
    public void From_elongation_and_back_is_where_one_began() =>
        Cases.Sample(c => new WearClock(c.Onset, c.Gamma) is var clock
            && Math.Abs(clock.ToElongation(clock.FromElongation(c.Percent)) - c.Percent) < 1e-6
            * Math.Exp(c.Gamma * Math.Max(0, c.Percent - c.Onset)));

    // Oracle: the derivative as a difference quotient.
    [Fact]
    public void The_slope_is_that_of_the_scale() =>
        Cases.Sample(c => new WearClock(c.Onset, c.Gamma) is var clock && Math.Abs(
            (clock.FromElongation(c.Percent + 1e-6) - clock.FromElongation(c.Percent - 1e-6)) / 2e-6
                - Math.Exp(clock.LogSlope(c.Percent))) < 1e-5);

    [Fact]
    public void Without_an_onset_the_clock_is_elongation_itself() =>
        Assert.Equal((2.7, 2.7, 0.0), new WearClock(double.PositiveInfinity, 1.4) is var even
            ? (even.FromElongation(2.7), even.ToElongation(2.7), even.LogSlope(2.7))
            : default);

    [Fact]
    public void Beyond_the_end_of_the_scale_elongation_stays_finite() =>
        Assert.Equal(15, new WearClock(2, 1).ToElongation(3.5));

    // A chain that wears evenly on the clock wears exp(gamma (e - e_c)) times as fast in elongation: docs/method.md.
    [Fact]
    public void Even_wear_on_the_clock_is_accelerating_wear_of_the_chain()
    {
        var clock = new WearClock(2, 1.4);
        var (now, later) = (clock.ToElongation(2.3), clock.ToElongation(2.3 + 1e-6));

        Assert.Equal(Math.Exp(1.4 * (now - 2)), (later - now) / 1e-6, 1e-4);
    }

    [Fact]
    public void A_rate_that_rises_threefold_and_no_more_wears_on_a_line_three_times_as_steep()
    {
        var clock = new WearClock(2, 4) { LogMost = Math.Log(3) };
        var knee = 2 + Math.Log(3) / 4;

        Assert.Equal(-Math.Log(3), clock.LogSlope(knee + 0.5), 12);
        Assert.Equal(0.1, clock.FromElongation(knee + 0.6) - clock.FromElongation(knee + 0.3), 12);
        Assert.All([1.5, 2.1, knee, 2.6, 4], e => Assert.Equal(e, clock.ToElongation(clock.FromElongation(e)), 12));
    }
}
