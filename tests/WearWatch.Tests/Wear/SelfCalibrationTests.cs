using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>
/// Oracle: simulated chains of a world with other constants of wear, whose true crossing hours are known (tests/data/SOURCES.md).
/// </summary>
public sealed class SelfCalibrationTests
{
    // Bar: 0.83. The same reached 0.87 elsewhere, where the default constants gave 0.77.
    [Fact]
    public void In_another_world_calibration_makes_the_bands_honest_for_chains_it_has_not_seen()
    {
        var (before, after, own) = CoverageOnOthers("wear/shifted", "wear/shifted", chains: 100);

        Assert.True(own.IsWorthwhile);
        Assert.InRange(after, 0.83, 0.98);
        Assert.InRange(after - before, 0.03, 1);
    }

    [Fact]
    public void In_the_world_that_the_defaults_are_of_calibration_does_no_harm()
    {
        var (before, after, _) = CoverageOnOthers("fleet-learning", "wear/fleet", chains: 80);

        Assert.InRange(after, before - 0.02, before + 0.05);
    }

    [Fact]
    public void The_same_chains_give_the_same_constants_to_the_bit()
    {
        var chains = Telling(RecordedFleet.Load("wear/shifted")).Take(30).ToList();

        var (once, twice) = (Calibrated(chains), Calibrated(chains));

        Assert.Equal(once.LogEvidenceGain, twice.LogEvidenceGain);
        Assert.Equal(once.Constants.Onsets, twice.Constants.Onsets);
        Assert.Equal(once.Constants with { Onsets = twice.Constants.Onsets }, twice.Constants);
        Assert.True(once.LogEvidenceGain > 0);
        Assert.Equal(1, once.Constants.Onsets.Sum(o => o.Weight), 1e-12);
    }

    [Fact]
    public void Two_chains_hardly_move_the_constants()
    {
        var own = Calibrated([.. Telling(RecordedFleet.Load("wear/shifted")).Take(2)]).Constants;

        Assert.Null(own.Curve);
        Assert.InRange(own.UnevenWear / WearConstants.Default.UnevenWear, 0.2, 5);
        Assert.InRange(own.JumpsPer1000Hours / WearConstants.Default.JumpsPer1000Hours, 0.4, 2.5);
        Assert.InRange(own.Spread.Early, 0.8, 1.25);
    }

    [Fact]
    public void Without_chains_the_constants_stay() => Assert.Equal(
        new CalibrationOutcome.NoChains(), SelfCalibration.Of([], WearConstants.Default));

    // A world that the constants do not suppose: wear by the root of the hours, all chains alike but for their pace.
    [Fact]
    public void A_plant_whose_chains_slow_down_is_forecast_by_its_own_curve()
    {
        var chains = SlowingChains(24, seed: 5);
        var own = new WearFilter(Calibrated([.. chains.Take(12).Select(c => c.Chain)]).Constants);

        double[] byDefault = [.. chains.Skip(12).Select(c => ErrorAtHalf(WearFilter.Default, c))];
        double[] byOwn = [.. chains.Skip(12).Select(c => ErrorAtHalf(own, c))];

        Assert.InRange(own.Constants.Curve!.Weight, 0.6, 1);
        Assert.InRange(Median.Of(byOwn), 0, 0.2);
        Assert.InRange(Median.Of(byDefault), 0.3, 1);
    }

    private static (TellingChain Chain, double TrueHours)[] SlowingChains(int count, int seed)
    {
        var chance = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ =>
        {
            var lifeHours = 8000 * Math.Exp(0.3 * (2 * chance.NextDouble() - 1));
            double Percent(double h) => 0.1 + 0.2 * (1 - Math.Exp(-h / 35)) + 2.7 * Math.Sqrt(h / lifeHours)
                + 0.1 * (chance.NextDouble() - 0.5);
            Observation[] read =
            [
                .. Enumerable.Range(1, 18).Select(i => lifeHours * 1.1 * i / 18)
                    .Select((h, i) => new Observation(h, Percent(h), 0.03, i)),
            ];
            return (new TellingChain(WearPrior.Broad, new FittedChain(true, read[^1].HoursSinceFitting, true, read)), lifeHours);
        })];
    }

    private static double ErrorAtHalf(WearFilter filter, (TellingChain Chain, double TrueHours) asked)
    {
        Observation[] known = [.. asked.Chain.Chain.Observations.TakeWhile(o => o.HoursSinceFitting < asked.TrueHours / 2)];
        var left = asked.TrueHours - known[^1].HoursSinceFitting;
        return Math.Abs(filter.Forecast(filter.Follow(WearPrior.Broad, known), 3).MiddleHours!.Value - left) / left;
    }

    /// <summary>
    /// Calibrates on every other chain; gives the share of bands that held on the rest, with the defaults and with the own
    /// constants.
    /// </summary>
    private static (double Before, double After, CalibrationOutcome.Calibrated Own) CoverageOnOthers(
        string folder, string decisions, int chains)
    {
        var fleet = RecordedFleet.Load(folder);
        var learned = fleet.Cards.Take(chains).Where((_, i) => i % 2 == 0).ToList();
        var others = fleet.Cards.Take(chains).Select(c => c.Name).Except(learned.Select(c => c.Name)).ToHashSet();
        var prior = DutyPrior.Learn(learned.Select(c => (c, fleet.Observations(c))));
        var own = Calibrated([.. learned.Select(c => new TellingChain(prior.For(c), fleet.Histories[c.Name].Current))]);
        return (Coverage(WearConstants.Default), Coverage(own.Constants), own);

        double Coverage(WearConstants constants) =>
            ForecastScore.Of(fleet, decisions, prior.For, constants, others.Contains).Average(s => s.Covers ? 1 : 0);
    }

    private static CalibrationOutcome.Calibrated Calibrated(List<TellingChain> chains) =>
        Assert.IsType<CalibrationOutcome.Calibrated>(SelfCalibration.Of(chains, WearConstants.Default));

    private static IEnumerable<TellingChain> Telling(RecordedFleet fleet) =>
        fleet.Cards.Select(c => new TellingChain(WearPrior.Broad, fleet.Histories[c.Name].Current));
}
