namespace WearWatch.Planning.Plans;

/// <summary>Moves one unit at a time to where it costs least, until no single move helps.</summary>
internal static class OneMoveDescent
{
    /// <summary>A gain below a millionth is rounding; following it could go round in circles.</summary>
    private const double Rounding = 1e-6;

    public static int[] From(PlanCase plan, IReadOnlyList<int> start, CancellationToken stop)
    {
        var placing = new Placing(plan, start);
        for (var improved = true; improved;)
        {
            stop.ThrowIfCancellationRequested();
            improved = false;
            for (var u = 0; u < plan.Units.Length; u++)
                improved |= plan.Fixed[u] is null && MoveToBest(plan, placing, u);
        }

        return placing.ToArray();
    }

    private static bool MoveToBest(PlanCase plan, Placing placing, int u)
    {
        var start = placing[u];
        var (best, bestCost) = (start, placing.Total - Rounding);
        foreach (var place in plan.WindowsOf[u].Append(PlanCase.Later).Where(p => plan.MayStand(u, p)))
        {
            placing.Move(u, place);
            if (placing.Total < bestCost) (best, bestCost) = (place, placing.Total);
        }

        placing.Move(u, best);
        return best != start;
    }
}
