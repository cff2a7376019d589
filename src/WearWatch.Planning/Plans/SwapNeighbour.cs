namespace WearWatch.Planning.Plans;

/// <summary>The place before or after the one where a swap stands, and what it would cost the whole plan to move there.</summary>
/// <param name="Move">The place, with the swap's own risks there.</param>
/// <param name="Differences">By how much each cause would cost more there, the largest difference first; none that is 0.</param>
public sealed record SwapNeighbour(SwapMove Move, IReadOnlyList<(CostCause Cause, double More)> Differences)
{
    /// <summary>
    /// What weighs most against it where it costs more, or for it where it costs less; null where nothing differs.
    /// </summary>
    public CostCause? Main => Differences
        .Where(d => d.More > 0 == Move.Change > 0).Select(d => (CostCause?)d.Cause).FirstOrDefault();
}
