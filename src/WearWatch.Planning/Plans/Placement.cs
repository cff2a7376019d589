using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Plans;

/// <summary>Where a chain's swap stands in a plan.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Window">Its window, or null when it is not swapped in the horizon.</param>
/// <param name="Own">What it costs there by itself.</param>
/// <param name="OutOfUseFrom">
/// From when it is out of use, since it holds a load and has no shutdown before its hard date; null for a chain that has one, or
/// that may run until its next chance.
/// </param>
public sealed record Placement(string Chain, ShutdownWindow? Window, OwnCost Own, DateTimeOffset? OutOfUseFrom = null);
