using WearWatch.Lives;
using WearWatch.Wear;

namespace WearWatch.Tests.Lives;

/// <summary>
/// Oracle: chains of known lives, swapped early by what their forecasts say, as a plant does that follows them.
/// </summary>
public sealed class ImputedLivesTests
{
    private const double LimitPercent = 2;
    private const double LogRate = -1.6;
    private const double LogRateDeviation = 0.35;
    private static readonly WearPrior Prior = new(LogRate, LogRateDeviation * LogRateDeviation, 0.25, 0.12, $"test");

    /// <summary>What runs in the test's world: no jumps, no acceleration, no wandering to speak of.</summary>
    private static readonly WearFilter Filter = new(WearConstants.Default with
    {
        RateDrift = 0.0005,
        UnevenWear = 0.001,
        JumpsPer1000Hours = 1e-4,
        Onsets = [new(null, 1)],
    });

    [Fact]
    public void Where_nearly_all_are_swapped_early_median_and_b10_come_from_wear_and_the_plain_estimate_is_far_off()
    {
        var lives = Swapped(200, seed: 3);
        var law = ImputedLives.Of(lives, LifeLaw.Lognormal)!;
        var plain = Assert.IsType<LifeFitOutcome.Fitted>(LifeFit.To(lives, LifeLaw.Lognormal)).Fit;

        Assert.InRange(lives.Count(l => l.Failed), 2, 40);
        Assert.Equal(lives.Count(l => !l.Failed), law.Drawn);
        Assert.InRange(law.Median(0.9).Hours / TrueHoursAt(0), 0.9, 1.1);
        Assert.InRange(law.B10(0.9).Hours / TrueHoursAt(-1.2816), 0.85, 1.15);
        Assert.InRange(plain.MedianHours / TrueHoursAt(0), 1.4, 1000);
    }

    // 40 plants, 90 % stated: fewer than 31 or none missed would each come by chance less than once in a hundred.
    [Fact]
    public void The_interval_of_the_median_holds_about_as_often_as_it_says()
    {
        var held = Enumerable.Range(0, 40).AsParallel()
            .Count(seed => ImputedLives.Of(Swapped(40, seed), LifeLaw.Lognormal)!.Median(0.9).Interval.Contains(TrueHoursAt(0)));

        Assert.InRange(held, 31, 39);
    }

    [Fact]
    public void The_same_lives_give_the_same_figures_to_the_bit() => Assert.Equal(
        ImputedLives.Of(Swapped(30, seed: 1), LifeLaw.Weibull)!.Steepness(0.9),
        ImputedLives.Of(Swapped(30, seed: 1), LifeLaw.Weibull)!.Steepness(0.9));

    [Fact]
    public void Lives_of_which_nothing_was_read_are_left_to_the_plain_estimate() => Assert.Null(ImputedLives.Of(
        [new(1000, LifeEnd.ReachedLimit), new(2000, LifeEnd.ReachedLimit), new(3000, LifeEnd.StillRunning)], LifeLaw.Weibull));

    private static double TrueHoursAt(double normal) => 1000 * 1.75 / Math.Exp(LogRate - LogRateDeviation * normal);

    /// <summary>
    /// Chains that wear evenly, each swapped at the early end of what was forecast at three quarters of its life.
    /// </summary>
    private static List<Life> Swapped(int count, int seed)
    {
        var chance = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => One(chance))];
    }

    private static Life One(Random chance)
    {
        var rate = Math.Exp(LogRate + LogRateDeviation * Normal(chance));
        var start = 0.25 + 0.05 * Normal(chance);
        var lifeHours = 1000 * (LimitPercent - start) / rate;
        Observation[] read =
        [
            .. Enumerable.Range(1, 15).Select(i => i / 20.0 * lifeHours)
                .Select((h, i) => new Observation(h, start + rate * h / 1000 + 0.05 * Normal(chance), 0.05, i)),
        ];
        var made = Filter.Forecast(Filter.Follow(Prior, read), LimitPercent);
        var swappedAt = read[^1].HoursSinceFitting + made.EarlyHours!.Value;
        if (swappedAt >= lifeHours) return new(lifeHours, LifeEnd.ReachedLimit);
        var chain = new FittedChain(true, swappedAt, Removed: true, read);
        return new(swappedAt, LifeEnd.ReplacedBefore)
        {
            Ahead = Filter.Forecast(chain, Filter.Follow(chain, Prior), LimitPercent),
        };
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
