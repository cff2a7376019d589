using WearWatch.Chains;

namespace WearWatch.Learning.Tests;

/// <summary>Hours since oiling and temperature are used where they help unseen chains, and only there.</summary>
public sealed class InputTrialTests
{
    private const string OilAge = FleetModel.HoursSinceOiling;

    // Oracle: the law that made the fleet, rate doubles with four times the hours (exponent 0.5). Tolerance: three standard
    // errors of the model's own.
    [Fact]
    public void Hours_since_oiling_that_drive_wear_are_used_and_their_effect_is_found()
    {
        var trained = A.Training(Told(A.Fleet(150, Law, seed: 3), seed: 3, effect: 0.5));

        Assert.True(trained.Model.Uses(OilAge));
        Assert.True(Trial(trained, OilAge).ErrorWith < Trial(trained, OilAge).ErrorWithout);
        var effect = trained.Report.Effects.Single(e => e.Name == "ln(hours since oiling / 24 h)");
        Assert.InRange(effect.Effect - 0.5, -3 * effect.StandardError, 3 * effect.StandardError);
        Assert.True(effect.IsDriver);
    }

    // Of twelve fleets where it means nothing, chance lets it win in one or two: one standard error of the difference is asked
    // for.
    [Fact]
    public void Hours_since_oiling_that_mean_nothing_are_left_out()
    {
        var used = Enumerable.Range(1, 12).Count(seed =>
            A.Training(Told(A.Fleet(80, Law, seed: seed), seed: seed, effect: 0)).Model.Uses(OilAge));

        Assert.InRange(used, 0, 2);
    }

    [Fact]
    public void Where_no_chain_tells_of_oilings_or_warmth_the_model_is_the_one_that_it_was()
    {
        var fleet = A.Fleet(60, Law);

        Assert.Empty(A.Training(fleet).Report.Trials);
        Assert.DoesNotContain(A.Training(fleet).Report.Effects, e => e.Name.Contains("oiling", StringComparison.Ordinal));
    }

    [Fact]
    public void A_chain_that_does_not_tell_its_oilings_has_a_wider_prior_and_the_saved_model_knows_it()
    {
        var model = A.Training(Told(A.Fleet(150, Law, seed: 3), seed: 3, effect: 0.8, untold: 0.3)).Model;
        using var saved = new MemoryStream();
        model.Save(saved);
        saved.Position = 0;
        var loaded = FleetModel.Load(saved);
        ChainCard With(double? hours) => A.Card() with { Duty = A.Card().Duty with { HoursSinceOiling = hours } };

        Assert.True(loaded.Uses(OilAge));
        Assert.Equal(model.Version, loaded.Version);
        Assert.True(loaded.PriorFor(With(null)).VarianceLogRate > loaded.PriorFor(With(60)).VarianceLogRate);
        Assert.True(loaded.PriorFor(With(200)).MeanLogRate > loaded.PriorFor(With(20)).MeanLogRate + 0.5);
    }

    private static double Law(ChainCard card) => Math.Log(0.2) + Math.Log(card.Duty.RelativeLoad!.Value / 0.5);

    /// <summary>Gives each chain hours since oiling from 10 to 300, on which its rate depends by a power of the effect.</summary>
    private static FleetChain[] Told(FleetChain[] fleet, int seed, double effect, double untold = 0)
    {
        var chance = new Random(1000 + seed);
        return [.. fleet.Select((chain, i) =>
        {
            var hours = 10 * Math.Pow(30, chance.NextDouble());
            var isTold = chance.NextDouble() >= untold;
            var factor = Math.Exp(effect * Math.Log(hours / 55));
            return new FleetChain(
                chain.Card with { Duty = chain.Card.Duty with { HoursSinceOiling = isTold ? hours : null } },
                [.. chain.Observations.Select(o => o with { HoursSinceFitting = 100 + (o.HoursSinceFitting - 100) / factor })]);
        })];
    }

    private static InputTrial Trial(FleetTrainingOutcome.Trained trained, string input) =>
        trained.Report.Trials.Single(t => t.Input == input);
}
