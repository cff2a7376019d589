using WearWatch.Chains;

namespace WearWatch.Learning.Tests;

/// <summary>
/// Oracle: the simulator's own law. 100 fleets of 150 chains: an exact 90 % interval holds the truth in 90 of 100 with a standard
/// deviation of 3; an effect that is none passes for a driver in 1 of 100.
/// </summary>
public sealed class EffectTests
{
    private const int Fleets = 100;

    private static readonly double[] PitchesMm = [12.7, 19.05, 25.4, 50.8];

    private static readonly IReadOnlyList<LogLinearRate> Lines = [.. Enumerable.Range(1, Fleets).Select(LineOfFleet)];

    private static readonly IReadOnlyList<IReadOnlyList<LearnedEffect>> Learned = [.. Lines.Select(EffectsOf)];

    private static readonly FleetTrainingOutcome.Trained Trained = A.Training(A.Fleet(60, Law));

    [Theory]
    [InlineData("ln(load / 0.5)", 1.0)]
    [InlineData("ln(speed / 1 m/s)", 0.6)]
    [InlineData("lubrication Auto", -0.25)]
    [InlineData("lubrication Dry", 1.3)]
    [InlineData("dust Heavy", 0.7)]
    public void The_90_percent_interval_of_an_effect_holds_the_truth_in_about_90_of_100_fleets(string name, double truth)
    {
        var held = Learned.Count(effects =>
            Named(effects, name) is var e && e.FactorLow <= Math.Exp(truth) && Math.Exp(truth) <= e.FactorHigh);
        Assert.InRange(held, 82, 97);
    }

    [Fact]
    public void All_five_intervals_together_hold_the_truth_in_85_to_95_of_100() => Assert.InRange(
        new[]
        {
            ("ln(load / 0.5)", 1.0),
            ("ln(speed / 1 m/s)", 0.6),
            ("lubrication Auto", -0.25),
            ("lubrication Dry", 1.3),
            ("dust Heavy", 0.7),
        }
            .Average(t => Learned.Count(e =>
                Math.Exp(t.Item2) is var f && Named(e, t.Item1).FactorLow <= f && f <= Named(e, t.Item1).FactorHigh)),
        85, 95);

    [Fact]
    public void A_factor_without_effect_is_named_a_driver_in_at_most_5_of_100_fleets() =>
        Assert.InRange(Learned.Count(effects => Named(effects, "ln(pitch / 25.4 mm)").IsDriver), 0, 5);

    [Fact]
    public void Strong_effects_are_named_drivers_in_all_fleets() => Assert.All(Learned, effects =>
    {
        Assert.True(Named(effects, "ln(load / 0.5)").IsDriver);
        Assert.True(Named(effects, "lubrication Dry").IsDriver);
    });

    // Dry to automatic: 1.3 + 0.25 in ln rate.
    [Fact]
    public void The_90_percent_interval_of_a_what_if_holds_the_truth_in_about_90_of_100_fleets()
    {
        var (dry, auto) = (A.Card(lubrication: LubricationState.Dry), A.Card(lubrication: LubricationState.Auto));
        var held = Lines.Count(line =>
            Math.Abs(line.Expect(auto) - line.Expect(dry) + 1.55) <= 1.6449 * Math.Sqrt(line.VarianceOfDifference(dry, auto)));
        Assert.InRange(held, 82, 97);
    }

    [Fact]
    public void What_if_it_were_oiled_automatically_is_answered_by_the_effects_on_the_way()
    {
        var change = Trained.Model.Change(A.Card(lubrication: LubricationState.Dry), A.Card(lubrication: LubricationState.Auto));
        Assert.Equal(Named(Trained.Report.Effects, "lubrication Auto").Effect
            - Named(Trained.Report.Effects, "lubrication Dry").Effect, change.LogRatio, 9);
        Assert.True(change.LifeFactorLow < change.LifeFactor && change.LifeFactor < change.LifeFactorHigh);
        Assert.Empty(change.Outside);
    }

    [Fact]
    public void No_change_of_the_card_is_no_change_of_the_rate()
    {
        var change = Trained.Model.Change(A.Card(), A.Card());
        Assert.Equal((0, 0, 1), (change.LogRatio, change.StandardError, change.LifeFactor));
    }

    [Fact]
    public void A_change_beyond_what_the_fleet_has_shown_is_marked() =>
        Assert.Equal(["relative load"], Trained.Model.Change(A.Card(), A.Card(load: 5)).Outside);

    private static double Law(ChainCard card) =>
        Math.Log(0.2) + Math.Log(card.Duty.RelativeLoad!.Value / 0.5) + 0.6 * Math.Log(card.Duty.SpeedMetresPerSecond!.Value)
        + card.Duty.Lubrication switch
        {
            LubricationState.Auto => -0.25,
            LubricationState.Poor => 0.6,
            LubricationState.Dry => 1.3,
            _ => 0,
        }
        + card.Duty.Dust switch { DustLevel.Moderate => 0.25, DustLevel.Heavy => 0.7, _ => 0 };

    // The log-linear part alone: what is said of effects does not depend on the trees or the folds, which take the time.
    private static LogLinearRate LineOfFleet(int seed)
    {
        var chance = new Random(seed);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        return LogLinearRate.Fit(
        [
            .. Enumerable.Range(0, 150).Select(_ =>
            {
                var card = A.Card(
                    0.2 + chance.NextDouble(), 0.3 + 3 * chance.NextDouble(), (LubricationState)chance.Next(4),
                    (DustLevel)chance.Next(3),
                    pitchMm: PitchesMm[chance.Next(4)]);
                return new RateSample(card, Law(card) + 0.35 * Normal() + 0.1 * Normal(), 0.1);
            })
        ]);
    }

    private static IReadOnlyList<LearnedEffect> EffectsOf(LogLinearRate line) =>
        [.. line.Design.ColumnNames.Select((name, i) =>
            new LearnedEffect(name, line.Coefficients[i], Math.Sqrt(line.Covariance[i * line.Design.Width + i])))];

    private static LearnedEffect Named(IReadOnlyList<LearnedEffect> effects, string name) => effects.Single(e => e.Name == name);
}
