using WearWatch.Wear;

namespace WearWatch.Learning.Tests;

public sealed class ChainRateTests
{
    [Fact]
    public void A_straight_track_shows_its_rate_and_start()
    {
        var rate = Assert.IsType<ChainRate.Shown>(ChainRate.Of(A.Track(0.2, scatterPercent: 1e-6)));
        Assert.Equal(Math.Log(0.2), rate.LogRate, 1e-4);
        Assert.Equal(0.2, rate.StartPercent, 1e-4);
    }

    // Oracle: 400 simulated tracks. The 1.3 of the standard error is for normal errors; these are uniform, and the tool's scatter
    // is given as 3.5 times what it is, so the standard error may be too large, never too small.
    [Fact]
    public void The_standard_error_covers_the_rate_s_error()
    {
        var rates = Enumerable.Range(0, 400).Select(seed => (ChainRate.Shown)ChainRate.Of(A.Track(0.2, seed: seed))).ToArray();
        var z = Math.Sqrt(rates.Average(r => Math.Pow((r.LogRate - Math.Log(0.2)) / r.StandardError, 2)));
        Assert.InRange(z, 0.1, 1.0);
    }

    [Fact]
    public void Run_in_and_acceleration_are_left_out()
    {
        Observation[] bent =
            [new(10, 5, 0.03, 0), .. A.Track(0.2, readings: 6), new(20_000, 2.5, 0.03, 7), new(21_000, 6, 0.03, 8)];
        Assert.Equal(ChainRate.Of(A.Track(0.2, readings: 6)), ChainRate.Of(bent));
    }

    [Fact]
    public void Chains_that_show_no_rate_say_why()
    {
        Assert.Equal(NoRateReason.TooFewReadings, Why(A.Track(0.2, readings: 2)));
        Assert.Equal(NoRateReason.AllAtOneTime, Why([new(500, 0.1, 0.03, 0), new(500, 0.2, 0.03, 1), new(500, 0.3, 0.03, 2)]));
        Assert.Equal(NoRateReason.NoWear, Why(A.Track(-0.05)));
        Assert.Equal(NoRateReason.TooUncertain, Why([new(500, 0.20, 0.1, 0), new(600, 0.21, 0.1, 1), new(700, 0.22, 0.1, 2)]));
    }

    private static NoRateReason Why(Observation[] observations) =>
        Assert.IsType<ChainRate.NotShown>(ChainRate.Of(observations)).Why;
}
