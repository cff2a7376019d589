using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;

namespace WearWatch.Plant.Planning;

/// <summary>The saved plan, with its orders.</summary>
/// <param name="Picture">What it was made from.</param>
/// <param name="Plan">The swaps and their costs.</param>
/// <param name="Orders">What must be ordered.</param>
public sealed record KeptPlanView(PlanPicture Picture, SwapPlan Plan, IReadOnlyList<PartOrder> Orders)
{
    /// <summary>The lines with a chain in the plan.</summary>
    public IReadOnlyList<string> Lines =>
        [.. Picture.Faces.Values.Select(f => f.Row.Line).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>What must be ordered, the most pressing first.</summary>
    public IReadOnlyList<PartOrder> ToOrder =>
        [.. Orders.Where(o => o.Quantity > 0)
            .OrderBy(o => o.LatestOrder).ThenBy(o => o.Spare.Part.ToString(), StringComparer.Ordinal)];

    /// <summary>The work packages of all coming stops, for other programs; the next stop first.</summary>
    public IReadOnlyList<StopPackageJson> Packages() =>
    [
        .. from stop in Plan.Placements.Select(p => p.Window).OfType<ShutdownWindow>().DistinctBy(w => w.Id)
           orderby stop.Start, stop.Id
           let package = WorkPackage.Of(this, stop.Id)
           select StopPackageJson.Of(PlannedStop.Of(this, package), package),
    ];

    /// <summary>The swap of a chain with all that belongs to it; null when the chain is not in the plan.</summary>
    public SwapJob? JobOf(string chain)
    {
        if (!Picture.Faces.TryGetValue(chain, out var face)) return null;
        var task = Picture.Input.Tasks.Single(t => t.Chain == chain);
        return new SwapJob
        {
            Face = face,
            Placement = Plan.Placements.Single(p => p.Chain == chain),
            Task = task,
            Cut = face.Row.Family.CutFor(PlanQuery.PitchesOf(face.Row), face.Row.HoldsLoad),
            Together = [.. Picture.Input.Tasks.Where(t => t.Chain != chain && IsBeside(t, task)).Select(t => t.Chain)],
            Note = Picture.Swaps.GetValueOrDefault(chain)?.Note ?? "",
        };
    }

    /// <summary>The chains for whose shortening a part is taken, before they are replaced.</summary>
    public IReadOnlyList<PlannedShortening> ShorteningsFor(Part part) =>
        [.. PlannedShortening.LeftBy(Plan, Picture.Input).Where(s => s.Needs.Any(need => need.Part == part))];

    private static bool IsBeside(SwapTask other, SwapTask task) =>
        task.ParallelGroup.Length > 0 && other.ParallelGroup == task.ParallelGroup && other.Line == task.Line;
}
