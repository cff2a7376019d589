using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Worker.Tracking;

/// <summary>The fleet model in use, and its training.</summary>
public sealed class FleetModels
{
    /// <summary>What the newest model expects of a chain; the broad prior while there is none.</summary>
    public ValueTask<WearPrior> PriorForAsync(ChainCard card, CancellationToken ct = default) => throw new NotImplementedException();

    /// <summary>Trains a model on all stored histories and keeps it; false when there are too few chains.</summary>
    public Task<bool> TrainAsync(CancellationToken ct = default) => throw new NotImplementedException();
}
