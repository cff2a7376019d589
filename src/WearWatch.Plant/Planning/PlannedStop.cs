namespace WearWatch.Plant.Planning;

/// <summary>A coming shutdown with the decisions that put swaps into it.</summary>
/// <param name="WindowId">Which shutdown.</param>
/// <param name="Line">The line that stands still.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it is over.</param>
/// <param name="SwapOf">The decisions, by chain; none when all were called off.</param>
public sealed record PlannedStop(
    string WindowId, string Line, DateTimeOffset Start, DateTimeOffset End, IReadOnlyDictionary<int, long> SwapOf)
{
    /// <summary>The decisions in their order.</summary>
    public IReadOnlyList<long> Swaps => [.. SwapOf.Values.Order()];

    /// <summary>The stop of a work package by the saved plan.</summary>
    public static PlannedStop Of(KeptPlanView plan, WorkPackage package) => new(
        package.Window.Id, package.Window.Line, package.Window.Start, package.Window.End,
        package.Steps.Select(s => s.Job.Face.Row).ToDictionary(c => c.Id, c => plan.Picture.Swaps[c.Name].Id));
}
