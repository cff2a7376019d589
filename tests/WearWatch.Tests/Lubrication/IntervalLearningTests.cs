using WearWatch.Lubrication;
using WearWatch.Lubrication.Intervals;
using WearWatch.Wear;

namespace WearWatch.Tests.Lubrication;

/// <summary>
/// Held against simulated plants whose true optimum is known (<see cref="OiledPlant"/>): 60 chains, two years, readings with 0.02
/// to 0.05 % scatter every 200 to 800 h, oiled irregularly about every 150 h.
/// </summary>
public sealed class IntervalLearningTests
{
    private static readonly OiledPlant Steady = new(age => 1 + 0.8 * age / 100);

    private static readonly OiledPlant NoEffect = new(_ => 2.2);

    private static readonly Lazy<Trial> HundredPlants = new(() => Try(Steady, 100));

    // Oracle: the cheapest interval by trying every hour in the simulated world. The bar is 25 %; seen: 100 of 100, all within 6
    // %.
    [Fact]
    public void The_learned_interval_lies_within_a_quarter_of_the_true_optimum() =>
        Assert.InRange(HundredPlants.Value.Ratios.Count(r => r is >= 0.75 and <= 1.25), 98, 100);

    // Same oracle. The bar is 85 of 100; the band has 7 % of its own for the shape, which this world does not need, and covers
    // more.
    [Fact]
    public void The_band_holds_the_true_optimum() => Assert.InRange(HundredPlants.Value.Covered, 85, 100);

    // A test at 1 % makes one claim in a hundred plants; five would be a test that is not one.
    [Fact]
    public void Where_oiling_has_no_effect_none_is_claimed() => Assert.InRange(Try(NoEffect, 100).Ratios.Count, 0, 5);

    // Chains in bad places that are also oiled seldom wear faster: between chains that looks like an effect of oil. It must not
    // be taken for one.
    [Fact]
    public void Neglected_chains_in_bad_places_do_not_pose_as_an_effect_of_oil() =>
        Assert.InRange(Try(NoEffect with { NeglectGoesWithBadPlaces = true }, 40).Ratios.Count, 0, 3);

    // The true rise is none of the six shapes looked at; the bars are those of the hundred plants, in proportion.
    [Theory]
    [InlineData("levels off")]
    [InlineData("jumps late")]
    [InlineData("misread")]
    public void The_interval_holds_where_the_rise_has_another_shape_or_readings_are_wrong(string world)
    {
        var plant = world switch
        {
            "levels off" => new OiledPlant(age => 1 + 2.5 * (1 - Math.Exp(-age / 200))),
            "jumps late" => new OiledPlant(age => age < 100 ? 1 : 1 + (age - 100) / 60),
            _ => Steady with { Misread = 0.01 },
        };
        var trial = Try(plant, 25);

        Assert.InRange(trial.Ratios.Count(r => r is >= 0.75 and <= 1.25), 23, 25);
        Assert.InRange(trial.Covered, 21, 25);
    }

    [Fact]
    public void With_few_chains_it_says_so()
    {
        var (lives, _) = (Steady with { Chains = 14 }).Run(seed: 1);

        var few = Assert.IsType<LearnedInterval.TooLittle>(
            IntervalLearning.Of(lives, OiledPlant.Costs, WearConstants.Default, seed: 7));
        Assert.Equal(14, few.Data.Chains);
        Assert.Contains("14 of the 15 chains", few.Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_costs_the_effect_is_told_and_no_interval()
    {
        var (lives, _) = Steady.Run(seed: 1);

        var effect =
            Assert.IsType<LearnedInterval.Effect>(IntervalLearning.Of(lives, costs: null, WearConstants.Default, seed: 7));
        Assert.Null(effect.Best);
        Assert.InRange(effect.Share, effect.ShareLow, effect.ShareHigh);
    }

    [Fact]
    public void The_same_history_gives_the_same_interval_and_the_curve_is_lowest_there()
    {
        var (lives, _) = Steady.Run(seed: 2);
        BestInterval Best() => Assert.IsType<LearnedInterval.Effect>(
            IntervalLearning.Of(lives, OiledPlant.Costs, WearConstants.Default, seed: 7)).Best!;

        var best = Best();
        Assert.Equal(best.Hours, Best().Hours);
        Assert.Equal(best.Curve, Best().Curve);
        var lowest = best.Curve.MinBy(p => p.Cost)!;
        Assert.InRange(best.Hours / lowest.IntervalHours, 0.9, 1.1);
        Assert.All(best.Curve, p => Assert.InRange(p.Cost, p.Low, p.High));
        Assert.True(best.SavingPer1000Hours > 0);
    }

    // Oracle: arithmetic. 0.2 % in 1,000 h of a 3 % life of 1,500 is 100; an oiling of 6 every 100 h is 60.
    [Fact]
    public void Cost_is_the_share_of_a_chain_worn_and_the_oilings() =>
        Assert.Equal(160, OiledPlant.Costs.Per1000Hours(100, 0.2), 1e-9);

    [Fact]
    public void Chains_without_recorded_oilings_stand_behind_nothing()
    {
        var (lives, _) = Steady.Run(seed: 1);
        OiledLife[] untold = [.. lives.Select(l => l with { Ages = OilAges.Unknown })];

        Assert.Equal(0, IntervalLearning.Of(untold, OiledPlant.Costs, WearConstants.Default, seed: 7).Data.Chains);
    }

    private static Trial Try(OiledPlant plant, int seeds)
    {
        var trial = new Trial([], 0);
        for (var seed = 1; seed <= seeds; seed++)
        {
            var (lives, truth) = plant.Run(seed);
            if (IntervalLearning.Of(lives, OiledPlant.Costs, WearConstants.Default,
                seed: 7) is not LearnedInterval.Effect { Best: { } best }) continue;
            trial.Ratios.Add(best.Hours / truth);
            if (best.LowHours <= truth && truth <= best.HighHours) trial = trial with { Covered = trial.Covered + 1 };
        }

        return trial;
    }

    /// <param name="Ratios">Learned over true optimum, of the plants where an effect was claimed.</param>
    /// <param name="Covered">In how many the band held the truth.</param>
    private sealed record Trial(List<double> Ratios, int Covered);
}
