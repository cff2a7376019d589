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

        Assert.True(own.IsClear);
        Assert.InRange(after, 0.83, 0.98);
        Assert.InRange(after - before, 0.03, 1);
    }

    // With 100 chains each for learning and for asking: 0.890 before, 0.887 after.
    [Fact]
    public void In_the_world_that_the_defaults_are_of_calibration_does_no_harm()
    {
        var (before, after, own) = CoverageOnOthers("fleet-learning", "wear/fleet", chains: 80);

        Assert.False(own.IsClear);
        Assert.InRange(after, before - 0.02, before + 0.05);
    }

    [Fact]
    public void The_same_chains_give_the_same_constants_to_the_bit()
    {
        var chains = Completed(RecordedFleet.Load("wear/shifted")).Take(30).ToList();

        var (once, twice) = (Calibrated(chains), Calibrated(chains));

        Assert.Equal(once.LogEvidenceGain, twice.LogEvidenceGain);
        Assert.Equal(once.Constants.Onsets, twice.Constants.Onsets);
        Assert.Equal(once.Constants with { Onsets = twice.Constants.Onsets }, twice.Constants);
        Assert.True(once.LogEvidenceGain > 0);
        Assert.Equal(1, once.Constants.Onsets.Sum(o => o.Weight), 1e-12);
    }

    [Fact]
    public void Too_few_chains_leave_the_constants_alone() =>
        Assert.Equal(
            new CalibrationOutcome.TooFewChains(Have: 2, Need: 30),
            SelfCalibration.Of([.. Completed(RecordedFleet.Load("wear/shifted")).Take(2)], WearConstants.Default));

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
        var own = Calibrated([.. learned.Select(c => new CompletedChain(prior.For(c), fleet.Histories[c.Name].Current))]);
        return (Coverage(WearConstants.Default), Coverage(own.Constants), own);

        double Coverage(WearConstants constants) =>
            ForecastScore.Of(fleet, decisions, prior.For, constants, others.Contains).Average(s => s.Covers ? 1 : 0);
    }

    private static CalibrationOutcome.Calibrated Calibrated(List<CompletedChain> chains) =>
        Assert.IsType<CalibrationOutcome.Calibrated>(SelfCalibration.Of(chains, WearConstants.Default));

    private static IEnumerable<CompletedChain> Completed(RecordedFleet fleet) =>
        fleet.Cards.Select(c => new CompletedChain(WearPrior.Broad, fleet.Histories[c.Name].Current));
}
