using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Learning;

/// <summary>One fitted chain that the fleet model may learn from, finished or running.</summary>
/// <remarks>Running chains belong in: a fleet of those only that reached their limit wears faster than the fleet does.</remarks>
/// <param name="Card">What the plant knows of it.</param>
/// <param name="Observations">Its observations since fitting.</param>
public sealed record FleetChain(ChainCard Card, IReadOnlyList<Observation> Observations)
{
    /// <summary>
    /// Whether the hours count from its fitting; if not, it tells of wear rates but not of where a new chain starts.
    /// </summary>
    public bool FittingKnown { get; init; } = true;
}
