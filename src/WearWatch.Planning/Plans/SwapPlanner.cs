namespace WearWatch.Planning.Plans;

/// <summary>Finds the plan that costs least in expectation.</summary>
public static class SwapPlanner
{
    private const double Rounding = 1e-6;

    /// <summary>Proposes a plan. Same input, same plan.</summary>
    /// <remarks>
    /// First walks that make a fixed number of moves; then the program that starts from their plan and looks for a cheaper one
    /// until what it has is proven to be within the gap. When that is not done in time, where it stands depends on the machine:
    /// then its bound is shown, and the walks' plan is taken.
    /// </remarks>
    /// <exception cref="OperationCanceledException">
    /// It was cancelled; the searches are asked to end and are not waited for.
    /// </exception>
    public static async Task<SwapPlan> ProposeAsync(
        PlanInput input, PlannerEffort effort, IProgress<PlanStage>? progress = null, CancellationToken stop = default)
    {
        progress?.Report(PlanStage.Costing);
        var plan = await Task.Run(() => new PlanCase(input), stop).WaitAsync(stop);
        progress?.Report(PlanStage.Searching);
        var walked = await Task.Run(() => Annealing.From(plan, EarliestDueDate.Place(plan), stop), stop).WaitAsync(stop);
        progress?.Report(PlanStage.Proving);
        var (proven, bound) = await ProveInTimeAsync(plan, walked, effort, stop);
        bound = Math.Max(bound, BoundOfEachAlone(plan));
        var best = proven is null || Cost(walked) <= Cost(proven) ? walked : proven;
        return SwapPlan.Of(plan, best) with
        {
            Bound = bound,
            SearchEnded = Cost(best) - bound <= effort.Gap * Cost(best) + Rounding,
        };

        double Cost(int[] placing) => PlanCosting.Weighed(plan, placing);
    }

    /// <summary>The plan by earliest due date, to compare with.</summary>
    public static SwapPlan ByEarliestDueDate(PlanInput input)
    {
        var plan = new PlanCase(input);
        return SwapPlan.Of(plan, EarliestDueDate.Place(plan));
    }

    /// <summary>
    /// The engine counts its own processor time; on a busy machine the person's time is what matters, so it is not waited for
    /// much longer.
    /// </summary>
    private static async Task<(int[]? Placing, double Bound)> ProveInTimeAsync(
        PlanCase plan, int[] start, PlannerEffort effort, CancellationToken stop)
    {
        try
        {
            return await Task.Run(() => Prove(plan, start, effort, stop), stop).WaitAsync(2 * effort.TimeLimit, stop);
        }
        catch (TimeoutException)
        {
            return (null, 0);
        }
    }

    /// <summary>Each unit where it costs least by itself, as if stops, crews and parts were free: no plan costs less.</summary>
    private static double BoundOfEachAlone(PlanCase plan) =>
        plan.Units.Select((_, u) => plan.ChoicesOf(u).Min(place => plan.TotalOf(u, place))).Sum();

    /// <summary>A plan within the gap of the best one, or none when time was up, and what no plan costs less than.</summary>
    private static (int[]? Placing, double Bound) Prove(PlanCase plan, int[] start, PlannerEffort effort, CancellationToken stop)
    {
        if (plan.Units.Length == 0) return (null, 0);
        using var model = new SwapModel(plan, start);
        using var interrupt = stop.Register(() => model.Interrupt());
        var found = model.Solve(effort.Gap, effort.TimeLimit);
        stop.ThrowIfCancellationRequested();
        if (found is null) return (null, 0);

        // What the search leaves below its gap, single moves often still find, at no cost.
        return model.HasEnded ? (OneMoveDescent.From(plan, found, stop), model.Bound) : (null, model.Bound);
    }
}
