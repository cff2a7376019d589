namespace WearWatch.Planning.Plans;

/// <summary>The plan that a careful person makes without a computer: the chain that is due first is placed first.</summary>
/// <remarks>
/// Each chain goes into the last window before its early date (5 %) that still has crew hours; else into the first one after it
/// that has; else it is left over. Where a hard date forbids that, it goes in beyond the crew's hours. It is what the planner is
/// compared with, and where its search starts.
/// </remarks>
internal static class EarliestDueDate
{
    public static int[] Place(PlanCase plan)
    {
        var placing = new int[plan.Units.Length];
        var turnOf = plan.Turns.SelectMany(t => t.Windows.Select(w => (Window: w, Turn: t.Name)))
            .ToDictionary(x => x.Window, x => x.Turn);
        var left = plan.Turns.ToDictionary(t => t.Name, t => t.Hours);
        foreach (var u in InOrder(plan))
        {
            var place = plan.Fixed[u] ?? Choose(plan, u, w => left[turnOf[w]] >= plan.Units[u].CrewHours);
            placing[u] = place;
            if (place != PlanCase.Later) left[turnOf[place]] -= plan.Units[u].CrewHours;
        }

        return placing;
    }

    /// <summary>What is kept takes its hours first.</summary>
    private static IEnumerable<int> InOrder(PlanCase plan) => Enumerable.Range(0, plan.Units.Length)
        .OrderBy(u => plan.Fixed[u] is null).ThenBy(u => DueHours(plan, u)).ThenBy(u => u);

    private static int Choose(PlanCase plan, int u, Func<int, bool> hasHours)
    {
        var due = DueHours(plan, u);
        if (due > plan.HoursAfter && plan.MayWait(u)) return PlanCase.Later;
        var open = plan.WindowsOf[u].Where(w => plan.MayStand(u, w)).ToArray();
        var fitting = open.Where(hasHours).ToArray();
        if (fitting.Length == 0 && !plan.MayWait(u)) fitting = open;
        var before = fitting.Where(w => plan.HoursAt[w] <= due).ToArray();
        return before.Length > 0 ? before[^1] : fitting.Length > 0 ? fitting[0] : PlanCase.Later;
    }

    private static double DueHours(PlanCase plan, int u) => plan.Units[u].Tasks.Min(t => t.Left.At(0.05));
}
