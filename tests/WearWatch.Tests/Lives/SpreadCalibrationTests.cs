using WearWatch.Lives;
using WearWatch.Tests.Wear;
using WearWatch.Wear;

namespace WearWatch.Tests.Lives;

/// <summary>
/// Oracle: streams of lives whose law is known. A forecast says lognormal with a middle of 1,000 h and a spread of 0.3; the truth
/// has the same middle and a spread of its own.
/// </summary>
public sealed class SpreadCalibrationTests
{
    private const double Said = 0.3;
    private const int Seeds = 100;

    // Chance lets 2 of 100 sound plants be taken for drifted within 300 lives, looked at after each (10,000 streams of coin
    // tosses).
    [Fact]
    public void Sound_forecasts_are_seldom_given_another_spread() =>
        Assert.InRange(Enumerable.Range(1, Seeds).Count(seed => FirstDrift(Lives(Said, seed), looks: 300) is not null), 0, 6);

    // Spread twice as wide as said: 59 % held of 90 %.
    [Fact]
    public void Forecasts_that_are_too_sure_are_found_in_time() =>
        Assert.InRange(Enumerable.Range(1, Seeds)
            .Count(seed => FirstDrift(Lives(2 * Said, seed), looks: 60) is { TooNarrow: true }), 95, Seeds);

    [Fact]
    public void Forecasts_that_are_too_careful_are_found_too() =>
        Assert.InRange(Enumerable.Range(1, Seeds)
            .Count(seed => FirstDrift(Lives(0.4 * Said, seed), looks: 150) is { TooNarrow: false }), 95, Seeds);

    // Conformal prediction of 100 lives: in the mean over fleets 0.90 to 0.92 of further lives held, on each side 0.95 to 0.96.
    [Theory]
    [InlineData(2.0, 0)]
    [InlineData(0.6, 0)]
    [InlineData(1.5, -0.3)] // lives end sooner than the middle says
    public void The_new_spread_holds_as_often_as_it_says(double wider, double shift)
    {
        var (held, early, count) = (0, 0, 0);
        foreach (var seed in Enumerable.Range(1, 40))
        {
            var spread = SpreadCalibration.Fit([.. Lives(wider * Said, seed, shift).Take(100)]);
            foreach (var further in Lives(wider * Said, 1000 + seed, shift).Take(250))
            {
                var scored = further with { Forecast = spread.Apply(further.Forecast!) };
                (held, early, count) = (held + (scored.Held90 ? 1 : 0), early + (scored.EndedBeforeInterval ? 1 : 0), count + 1);
            }
        }

        Assert.InRange((double)held / count, 0.885, 0.935);
        Assert.InRange((double)early / count, 0.03, 0.065);
    }

    // Oracle: the true lives of another world of wear (tests/data/SOURCES.md), forecast with this one's constants. Learned on
    // every other chain, the intervals of the rest hold as stated; 50 lives have a binomial deviation of 0.042.
    [Fact]
    public void In_another_world_of_wear_the_spread_of_half_the_chains_brings_the_other_half_back()
    {
        var fleet = RecordedFleet.Load("wear/shifted");
        var prior = DutyPrior.Learn(fleet.Cards.Select(c => (c, fleet.Observations(c))));
        var narrow = new ForecastSpread(0.6, 0.6); // as a plant would have it whose constants were taken for surer than they are
        var all = ForecastScore.Of(fleet, "wear/shifted", prior.For).Where(s => s is { LimitPercent: 2.0, LifeShare: 0.5 })
            .Select(s => new ScoredForecast
            {
                Forecast = narrow.Apply(s.Forecast),
                LastReadingHours = s.LastReadingHours,
                StandingHours = s.NowHours,
                LifeHours = s.TrueHours,
            }).ToList();
        var (learned, rest) = (all.Where((_, i) => i % 2 == 0).ToList(), all.Where((_, i) => i % 2 == 1).ToList());
        var drifted = Assert.IsType<SpreadOutcome.Drifted>(SpreadCalibration.Of(learned, ForecastSpread.AsMade));
        double Held(ForecastSpread spread) =>
            ObservedShare.In(rest, f => (f with { Forecast = spread.Apply(f.Forecast!) }).Held90).Fraction;
        Assert.InRange(Held(ForecastSpread.AsMade), 0.4, 0.8);
        Assert.InRange(Held(drifted.Spread), 0.83, 1);
    }

    [Fact]
    public void From_few_lives_nothing_is_concluded() => Assert.Equal(
        new SpreadOutcome.TooFewLives(39, SpreadCalibration.FewestLives),
        SpreadCalibration.Of(Lives(3 * Said, seed: 1).Take(39), ForecastSpread.AsMade));

    // Once given, the spread counts: the same lives no longer speak against it.
    [Fact]
    public void A_spread_that_has_been_given_is_judged_with_what_it_does()
    {
        var lives = Lives(2 * Said, seed: 1).Take(100).ToList();
        var drifted = Assert.IsType<SpreadOutcome.Drifted>(SpreadCalibration.Of(lives, ForecastSpread.AsMade));
        Assert.IsType<SpreadOutcome.Holds>(SpreadCalibration.Of(lives, drifted.Spread));
    }

    [Fact]
    public void A_spread_leaves_the_middle_keeps_the_order_and_can_be_undone()
    {
        var made = Lives(Said, seed: 1).First().Forecast!;
        var wider = new ForecastSpread(1.5, 2).Apply(made);
        Assert.Equal(made.MiddleHours, wider.MiddleHours);
        Assert.Equal(wider.PercentilesHours.Order(), wider.PercentilesHours);
        Assert.True(wider.EarlyHours < made.EarlyHours && wider.LateHours > made.LateHours);
        Assert.All(made.PercentilesHours.Zip(new ForecastSpread(1.5, 2).Undo(wider).PercentilesHours),
            p => Assert.Equal(p.First, p.Second, 1e-9 * p.First));
    }

    [Fact]
    public void What_has_been_passed_and_what_has_no_end_stay_where_they_are()
    {
        var made = new WearForecast
        {
            LimitPercent = 3,
            ProbabilityPassed = 0.1,
            PercentilesHours = [.. Enumerable.Range(1, 99)
                .Select(p => p <= 10 ? 0 : p > 90 ? WearForecast.HorizonHours : 100.0 * p)],
        };
        var wider = new ForecastSpread(2, 2).Apply(made);
        Assert.Equal((0.0, null), (wider.Quantile(10), wider.Quantile(91)));
        Assert.Equal(100 * 50 * Math.Pow(20.0 / 50, 2), wider.Quantile(20)!.Value, 1e-9);
    }

    private static SpreadOutcome.Drifted? FirstDrift(IEnumerable<ScoredForecast> lives, int looks)
    {
        var seen = lives.Take(looks).ToList();
        return Enumerable.Range(SpreadCalibration.FewestLives, looks - SpreadCalibration.FewestLives + 1)
            .Select(n => SpreadCalibration.Of(seen[Math.Max(0, n - SpreadCalibration.MostLives)..n], ForecastSpread.AsMade))
            .OfType<SpreadOutcome.Drifted>().FirstOrDefault();
    }

    private static IEnumerable<ScoredForecast> Lives(double spread, int seed, double shift = 0)
    {
        var chance = new Random(seed);
        while (true)
        {
            var normal = Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
            yield return new ScoredForecast
            {
                Forecast = AsSaid,
                LastReadingHours = 1000,
                StandingHours = 1000,
                LifeHours = 1000 + 1000 * Math.Exp(shift + spread * normal),
            };
        }
    }

    private static readonly WearForecast AsSaid = new()
    {
        LimitPercent = 3,
        ProbabilityPassed = 0,
        PercentilesHours = [.. Enumerable.Range(1, 99)
            .Select(p => 1000 * Math.Exp(Said * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, p / 100.0)))],
    };
}
