using WearWatch.Chains;
using WearWatch.Gauging;

namespace WearWatch.Wear;

/// <summary>A reading that was not used, with why and what it may have been meant to be.</summary>
/// <param name="ReadingIndex">Which of the chain's readings, from 0.</param>
/// <param name="Reason">Why it is held back, in plain words.</param>
/// <param name="Corrections">What would make it fit, likeliest first; may be empty.</param>
public sealed record HeldBackReading(int ReadingIndex, string Reason, IReadOnlyList<string> Corrections);

/// <summary>One fitted chain, from fitting to removal.</summary>
/// <param name="FittingRecorded">Whether its fitting is recorded, or was concluded from the readings.</param>
/// <param name="RunningHours">Running hours from fitting to its last reading or its removal.</param>
/// <param name="Removed">Whether it has been replaced.</param>
/// <param name="Observations">Its readings in order of running hours.</param>
public sealed record FittedChain(bool FittingRecorded, double RunningHours, bool Removed, IReadOnlyList<Observation> Observations);

/// <summary>A chain's raw readings and events put in order: which fitted chain each reading belongs to, and at which running hours.</summary>
/// <param name="Lives">The fitted chains in order; the last one runs now. Never empty.</param>
/// <param name="HeldBack">The readings that were not used.</param>
public sealed record ChainHistory(IReadOnlyList<FittedChain> Lives, IReadOnlyList<HeldBackReading> HeldBack)
{
    /// <summary>The chain that runs now.</summary>
    public FittedChain Current => Lives[^1];

    /// <summary>Takes in raw readings and events.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings in the order in which they were taken.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    public static ChainHistory Take(ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events) =>
        throw new NotImplementedException();
}
