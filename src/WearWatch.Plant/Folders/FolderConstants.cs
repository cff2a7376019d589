using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Folders;

/// <summary>
/// The constants of wear that a folder's own chains show: for each half of the chains, what the other half has taught.
/// </summary>
/// <remarks>The fewer chains the other half has, the nearer they stay to the defaults.</remarks>
public sealed class FolderConstants
{
    private const int Halves = 2;

    private readonly Dictionary<string, int> half;
    private readonly WearConstants[] taught;

    private FolderConstants(Dictionary<string, int> half, WearConstants[] taught) => (this.half, this.taught) = (half, taught);

    /// <summary>Calibrates on each half.</summary>
    /// <param name="chains">The chains.</param>
    /// <param name="models">What is believed of each before its first reading.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="ct">Stops between the halves.</param>
    public static async Task<FolderConstants> CalibrateAsync(
        IReadOnlyList<FolderChain> chains, FolderModels models, IProgress<double> progress, CancellationToken ct)
    {
        var half = chains.Select((chain, i) => (chain.Card.Name, Half: i % Halves)).ToDictionary(c => c.Name, c => c.Half);
        var taught = new WearConstants[Halves];
        for (var h = 0; h < Halves; h++)
        {
            ct.ThrowIfCancellationRequested();
            List<TellingChain> telling =
            [
                .. from chain in chains
                   where half[chain.Card.Name] != h
                   from life in TellingChain.Of(
                       ChainHistory.Take(chain.Card, chain.Readings, chain.Events),
                       life => models.PriorFor(
                           DutySeen.Of(chain.Card, life, chain.Readings, chain.Events, ProductionCalendar.AlwaysRunning)))
                   select life
            ];
            taught[h] = (await Task.Run(() => SelfCalibration.Of(telling, WearConstants.Default), ct))
                .Else(WearConstants.Default);
            progress.Report((h + 1.0) / Halves);
        }

        return new FolderConstants(half, taught);
    }

    /// <summary>The constants for a chain.</summary>
    public WearConstants For(ChainCard card) => taught[half[card.Name]];
}
