namespace WearWatch.Planning.Plans;

/// <summary>Finds the plan that costs least in expectation.</summary>
public static class SwapPlanner
{
    /// <summary>Proposes a plan. Same input, same plan, as long as the search ends by its gap.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled; the search is asked to end and is not waited for.</exception>
    public static async Task<SwapPlan> ProposeAsync(
        PlanInput input, PlannerEffort effort, IProgress<PlanStage>? progress = null, CancellationToken stop = default)
    {
        progress?.Report(PlanStage.Costing);
        var plan = await Task.Run(() => new PlanCase(input), stop).WaitAsync(stop);
        progress?.Report(PlanStage.FirstPlan);
        var first = await Task.Run(() => Annealing.From(plan, EarliestDueDate.Place(plan), stop), stop).WaitAsync(stop);
        progress?.Report(PlanStage.Searching);
        var (found, bound, ended) = await SearchInTimeAsync(plan, effort, first, stop);
        return SwapPlan.Of(plan, found) with { Bound = Math.Max(bound, BoundOfEachAlone(plan)), SearchEnded = ended };
    }

    /// <summary>The plan by earliest due date, to compare with.</summary>
    public static SwapPlan ByEarliestDueDate(PlanInput input)
    {
        var plan = new PlanCase(input);
        return SwapPlan.Of(plan, EarliestDueDate.Place(plan));
    }

    /// <summary>The engine counts its own processor time; on a busy machine the person's time is what matters, so it is not waited for much longer.</summary>
    private static async Task<(int[] Placing, double Bound, bool Ended)> SearchInTimeAsync(
        PlanCase plan, PlannerEffort effort, int[] first, CancellationToken stop)
    {
        try
        {
            return await Task.Run(() => Search(plan, effort, first, stop), stop).WaitAsync(2 * effort.TimeLimit, stop);
        }
        catch (TimeoutException)
        {
            return (first, 0, false);
        }
    }

    /// <summary>Each unit where it costs least by itself, as if stops, crews and parts were free: no plan costs less.</summary>
    private static double BoundOfEachAlone(PlanCase plan) =>
        plan.Units.Select((_, u) => plan.Worthwhile[u].Select(w => plan.OwnTotal[u][w]).Append(plan.LaterTotal[u]).Min()).Sum();

    private static (int[] Placing, double Bound, bool Ended) Search(PlanCase plan, PlannerEffort effort, int[] first, CancellationToken stop)
    {
        if (plan.Units.Length == 0) return (first, 0, true);
        using var model = new SwapModel(plan);
        using var interrupt = stop.Register(() => model.Interrupt());
        var found = model.Solve(effort.Gap, effort.TimeLimit);
        stop.ThrowIfCancellationRequested();
        if (found is null) return (first, 0, false);

        // What the search leaves below its gap, single moves often still find, at no cost.
        var better = OneMoveDescent.From(plan, found, stop);
        var (a, b) = (PlanCosting.Of(plan, better).Total, PlanCosting.Of(plan, first).Total);
        return (a <= b ? better : first, model.Bound, (Math.Min(a, b) - model.Bound) <= effort.Gap * Math.Min(a, b) + 1e-6);
    }
}
