namespace WearWatch.Planning.Plans;

/// <summary>A plan: where each chain's swap stands, what that costs in expectation, how good it is, and where it hurts.</summary>
public sealed record SwapPlan
{
    /// <summary>The placements, by the chain's name.</summary>
    public required IReadOnlyList<Placement> Placements { get; init; }

    /// <summary>What it costs in expectation, counted anew from the placements.</summary>
    public required PlanCost Cost { get; init; }

    /// <summary>No plan costs less than this, proven; zero for a plan that was not searched for.</summary>
    public double Bound { get; init; }

    /// <summary>Whether the plan is proven to be within the gap that was asked for.</summary>
    public bool SearchEnded { get; init; }

    /// <summary>Where the plan does not hold, and what would help.</summary>
    public required IReadOnlyList<PlanRemark> Remarks { get; init; }

    /// <summary>By which share of its cost the plan may be above the best one.</summary>
    public double Gap => Cost.Total > 0 ? Math.Max(0, (Cost.Total - Bound) / Cost.Total) : 0;

    internal static SwapPlan Of(PlanCase plan, int[] placing) => new()
    {
        Placements = [.. plan.Units
            .SelectMany((unit, u) => unit.Tasks.Select(task => PlacementOf(plan, u, task, placing[u])))
            .OrderBy(p => p.Chain, StringComparer.Ordinal)],
        Cost = PlanCosting.Of(plan, placing),
        Remarks = PlanRemarks.Of(plan, placing),
    };

    private static Placement PlacementOf(PlanCase plan, int u, Swaps.SwapTask task, int place) => place == PlanCase.Later
        ? new Placement(task.Chain, null, OwnCost.After(task, plan.HoursInUse(u), plan.Input.Costs), plan.OutOfUseFrom[u])
        : new Placement(task.Chain, plan.Windows[place], OwnCost.Of(task, plan.HoursAt[place], plan.Input.Costs));
}
