using WearWatch.Planning.Plans;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>All that the planner's pages start from.</summary>
/// <param name="Input">What a plan is made from.</param>
/// <param name="Faces">The chains of the plan by name.</param>
/// <param name="Swaps">The decisions that stand, by the chain's name.</param>
/// <param name="Time">The moment and the plant's zone.</param>
/// <param name="HasRules">Whether any shutdown is planned at all.</param>
public sealed record PlanPicture(
    PlanInput Input, IReadOnlyDictionary<string, ChainFace> Faces, IReadOnlyDictionary<string, SwapRow> Swaps, PlantTime Time, bool HasRules);
