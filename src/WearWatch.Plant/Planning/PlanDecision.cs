using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>A decision on a swap.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="Swap">The decision.</param>
/// <param name="Before">When the swap was planned before; null for a chain that was not.</param>
public sealed record PlanDecision(string Chain, SwapRow Swap, DateTimeOffset? Before);
