using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Plans;

/// <summary>Where a chain's swap stands in a plan.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Window">Its window, or null when it is not swapped in the horizon.</param>
/// <param name="Own">What it costs there by itself.</param>
public sealed record Placement(string Chain, ShutdownWindow? Window, OwnCost Own);
