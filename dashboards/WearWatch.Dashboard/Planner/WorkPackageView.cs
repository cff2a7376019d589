using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Planner;

/// <summary>The work package of a stop, and the stops that have one.</summary>
public sealed record WorkPackageView
{
    public required PlantTime Time { get; init; }

    /// <summary>The package; null when no stop is asked for, or none with a swap.</summary>
    public required WorkPackage? Package { get; init; }

    /// <summary>The job cards of its swaps, in their order.</summary>
    public required IReadOnlyList<JobCard> Cards { get; init; }

    /// <summary>The cautions of all its swaps, each once.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>The stops with a swap and how many each has, the next first.</summary>
    public required IReadOnlyList<(ShutdownWindow Window, int Swaps)> Stops { get; init; }
}
