using WearWatch.Plant.WorkOrders;

namespace WearWatch.Plant.Planning;

/// <summary>A swap of a planned shutdown: what becomes a work order elsewhere.</summary>
public sealed record StopSwapJson
{
    /// <summary>Stays the same until the decision changes, such as <c>swap-12</c>; reports on the work order name it.</summary>
    public required string Id { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>Its position.</summary>
    public required string Position { get; init; }

    /// <summary>Its type, as the store calls it.</summary>
    public required string ChainType { get; init; }

    /// <summary>When it begins.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>How long it takes, h.</summary>
    public required double Hours { get; init; }

    /// <summary>Which fitters do it, from 1.</summary>
    public required IReadOnlyList<int> Fitters { get; init; }

    /// <summary>The chains that are swapped together with it.</summary>
    public required IReadOnlyList<string> Together { get; init; }

    /// <summary>What is cut and laid out for it.</summary>
    public required KitJson Kit { get; init; }

    /// <summary>What a person noted on the decision; empty for nothing.</summary>
    public required string Note { get; init; }

    /// <summary>What no figure says of a chain that lifts or holds a load; null for any other.</summary>
    public required string? Caution { get; init; }

    /// <summary>A step of a package.</summary>
    public static StopSwapJson Of(WorkPackage package, PackageStep step, long swapId) => new()
    {
        Id = SwapId.Of(swapId),
        Chain = step.Job.Face.Row.Name,
        Position = step.Job.Face.Row.Position,
        ChainType = PlanQuery.TypeOf(step.Job.Face.Row),
        Start = package.StartOf(step),
        Hours = step.Job.Task.Hours,
        Fitters = step.Turn.Fitters,
        Together = step.Job.Together,
        Kit = KitJson.Of(step.Job.Face, step.Job.Task.TakesSprockets),
        Note = step.Job.Note,
        Caution = step.Job.Face.Row.HoldsLoad ? Chains.Caution.LiftingInBrief.ToString() : null,
    };
}
