using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>What one more reading may show must agree, on the whole, with what is believed without it.</summary>
public sealed class ReadingToComeTests
{
    private const double LimitPercent = 3;
    private const double Hours = 5200;

    private static readonly FittedChain Chain = new(
        true, 4600, false,
        [.. Enumerable.Range(1, 5).Select(i => new Observation(900 * i, 0.25 + 0.32 * 0.9 * i, 0.05, i - 1))]);

    private static readonly WearFilter Filter = WearFilter.Default;
    private static readonly WearTrack Track = Filter.Follow(Chain, WearPrior.Broad);

    [Fact]
    public void Its_weights_sum_to_one() => Assert.Equal(1, Outcomes(0.05).Sum(o => o.Weight), 8);

    [Fact]
    public void The_mean_of_the_odds_after_it_is_the_odds_before_it()
    {
        // The law of total probability; five nodes and the drawing of forecasts leave some hundredths.
        foreach (var ahead in (double[])[1500, 3000, 4500])
        {
            var before = Filter.Forecast(Track, LimitPercent, Hours - Track.Hours).ProbabilityWithin(ahead);
            var after = Outcomes(0.05).Sum(o => o.Weight * o.Forecast.ProbabilityWithin(ahead));
            Assert.Equal(before, after, 0.04);
        }
    }

    [Fact]
    public void A_finer_gauge_tells_more_apart()
    {
        double Spread(double scatter) =>
            Outcomes(scatter) is var o ? o[1].Forecast.MiddleHours!.Value - o[3].Forecast.MiddleHours!.Value : 0;
        Assert.True(Spread(0.02) > 1.2 * Spread(0.3));
    }

    private static IReadOnlyList<ReadingToCome> Outcomes(double scatterPercent) =>
        ReadingToCome.Outcomes(Filter, Chain, Track, Hours, scatterPercent, LimitPercent);
}
