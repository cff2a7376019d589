using WearWatch.Chains;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>All that a plan starts from.</summary>
public sealed record PlanPicture
{
    /// <summary>What a plan is made from.</summary>
    public required PlanInput Input { get; init; }

    /// <summary>The chains of the plan by name.</summary>
    public required IReadOnlyDictionary<string, ChainFace> Faces { get; init; }

    /// <summary>The decisions that stand, by the chain's name.</summary>
    public required IReadOnlyDictionary<string, SwapRow> Swaps { get; init; }

    /// <summary>Their work orders in another system, as far as reported, by the chain's name.</summary>
    public required IReadOnlyDictionary<string, WorkOrder> Orders { get; init; }

    /// <summary>From whom parts are usually had, as far as that is known.</summary>
    public required IReadOnlyDictionary<Part, string> Suppliers { get; init; }

    /// <summary>What is taken from common practice for each chain, by its name.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<PlanAssumption>> Assumed { get; init; }

    /// <summary>Which state of the decisions it shows: a number that grows with each decision and each outcome.</summary>
    public required int Revision { get; init; }

    /// <summary>The moment and the plant's zone.</summary>
    public required PlantTime Time { get; init; }

    /// <summary>
    /// What is laid out with a part for the swaps that take it: the chain and its kit, where something of it is on record.
    /// </summary>
    /// <param name="part">The part.</param>
    public IReadOnlyList<(string Chain, SpareKit Kit)> KitsFor(Part part) =>
    [
        .. from task in Input.Tasks
           where task.Needs.Any(need => need.Part == part)
           let kit = Faces[task.Chain].Row.ToCard().Kit.For(part.Kind == PartKind.Sprocket)
           where kit != SpareKit.None
           select (task.Chain, kit),
    ];
}
