using WearWatch.Chains.Families;

namespace WearWatch.Plant.Planning;

/// <summary>What the swaps of a family take.</summary>
/// <param name="Family">The family.</param>
/// <param name="Work">Hours and people.</param>
/// <param name="IsOwn">Whether the plant set it; otherwise it is the assumption to start with.</param>
public sealed record SwapWorkLine(ChainFamily Family, SwapWork Work, bool IsOwn);
