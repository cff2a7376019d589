using WearWatch.Planning.Costs;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;
using WearWatch.Running;

namespace WearWatch.Planning.Plans;

/// <summary>All that a plan is made from. The same input gives the same plan.</summary>
public sealed record PlanInput
{
    /// <summary>The moment at which the plan is made.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>Windows that begin before it can be used.</summary>
    public required DateTimeOffset HorizonEnd { get; init; }

    /// <summary>
    /// No proposal changes what is planned in shutdowns that begin before it: their work is prepared already. A person may.
    /// </summary>
    public DateTimeOffset FrozenUntil { get; init; }

    /// <summary>The chains that may have to be swapped.</summary>
    public required IReadOnlyList<SwapTask> Tasks { get; init; }

    /// <summary>The chains that are to be shortened within the horizon.</summary>
    public IReadOnlyList<PlannedShortening> Shortenings { get; init; } = [];

    /// <summary>What is to be said first, whatever is planned, of chains that hold a load.</summary>
    public IReadOnlyList<LoadWarning> LoadWarnings { get; init; } = [];

    /// <summary>The planned shutdowns.</summary>
    public required IReadOnlyList<ShutdownWindow> Windows { get; init; }

    /// <summary>The store. A part that it has no record of limits no swap; the order list names it.</summary>
    public IReadOnlyList<Spare> Spares { get; init; } = [];

    /// <summary>What things cost.</summary>
    public PlanningCosts Costs { get; init; } = new();

    /// <summary>When the lines run.</summary>
    public ProductionCalendar Calendar { get; init; } = ProductionCalendar.AlwaysRunning;

    /// <summary>
    /// Swaps that stay where they are: the window's id by the chain's name; null keeps a chain out of the horizon.
    /// </summary>
    public IReadOnlyDictionary<string, string?> Kept { get; init; } = new Dictionary<string, string?>();
}
