using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Plant.Tracking;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Folders;

/// <summary>
/// What the other chains of a folder let expect of each one: ten fleet models, none of which has seen the chains that it is asked
/// about.
/// </summary>
public sealed class FolderModels
{
    /// <summary>Chains are dealt into so many groups; each group's model learns from the others.</summary>
    public const int Groups = 10;

    private readonly Dictionary<string, int> group;
    private readonly FleetModel?[] models;

    private FolderModels(Dictionary<string, int> group, FleetModel?[] models) => (this.group, this.models) = (group, models);

    /// <summary>Trains the models.</summary>
    /// <param name="chains">The chains.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="ct">Stops between two models.</param>
    public static async Task<FolderModels> TrainAsync(
        IReadOnlyList<FolderChain> chains, IProgress<double> progress, CancellationToken ct)
    {
        var group = chains.Select((chain, i) => (chain.Card.Name, Group: i % Groups)).ToDictionary(c => c.Name, c => c.Group);
        var lives = chains.ToDictionary(
            c => c.Card.Name, c => FleetModels.Lives(c.Card, c.Readings, c.Events, ProductionCalendar.AlwaysRunning).ToList());
        return new FolderModels(group, await InParallel.MakeAsync([.. Enumerable.Range(0, Groups)], Train, progress, ct));

        FleetModel? Train(int asked)
        {
            var others = chains.Where(c => group[c.Card.Name] != asked).SelectMany(c => lives[c.Card.Name]).ToList();
            return (FleetTraining.Train(others, FleetModels.Seed) as FleetTrainingOutcome.Trained)?.Model;
        }
    }

    /// <summary>What is believed of a chain before its first reading.</summary>
    /// <param name="seen">Its card with what its position has shown.</param>
    public WearPrior PriorFor(ChainCard seen) => models[group[seen.Name]]?.PriorFor(seen) ?? WearPrior.Broad;
}
