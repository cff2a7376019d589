namespace WearWatch.Planning.Plans;

/// <summary>
/// Counts what a placing costs: the one place where the rules of cost stand, beside the solver's own statement of them.
/// </summary>
internal static class PlanCosting
{
    public static PlanCost Of(PlanCase plan, ReadOnlySpan<int> placing)
    {
        var costs = plan.Input.Costs;
        var used = new bool[plan.Windows.Length];
        var overrun = new double[plan.Windows.Length];
        var crew = new double[plan.Windows.Length];
        double unused = 0, past = 0, breakdowns = 0, stops = 0, outOfUse = 0, failures = 0;
        for (var u = 0; u < placing.Length; u++)
        {
            var (unit, place) = (plan.Units[u], placing[u]);
            var own = plan.OwnOf(u, place);
            (unused, past, breakdowns) = (unused + own.UnusedLife, past + own.PastLimit, breakdowns + own.Breakdown);
            failures += Share(own.Breakdown, costs.BreakdownOf(unit.Line));
            if (place == PlanCase.Later)
            {
                (stops, outOfUse) = (stops + costs.StopOf(unit.Line), outOfUse + plan.OutOfUseCost[u]);
                continue;
            }

            if (!used[place]) stops += costs.StopOf(unit.Line);
            used[place] = true;
            crew[place] += unit.CrewHours;
            overrun[place] = Math.Max(overrun[place], unit.Hours - plan.Windows[place].Length.TotalHours);
        }

        return new PlanCost
        {
            UnusedLife = unused,
            PastLimit = past,
            Breakdowns = breakdowns,
            Stops = stops,
            OutOfUse = outOfUse,
            Overruns = plan.Windows.Select((w, i) => overrun[i] * costs.StoppedPerHour(w.Line)).Sum(),
            Overtime = costs.OvertimePerHour * plan.Turns.Sum(t => Math.Max(0, t.Windows.Sum(w => crew[w]) - t.Hours)),
            Express = ExpressCost(plan, placing),
            ExpectedBreakdowns = failures,
        };
    }

    /// <summary>
    /// How much of a part must come with haste: the largest amount by which what is needed is ahead of what is there.
    /// </summary>
    public static int ExpressQuantity(PlanCase plan, PartSupply supply, ReadOnlySpan<int> placing) =>
        Ahead(plan, supply, placing, supply.Binds);

    /// <summary>How much of a part cannot come in time, not even with haste.</summary>
    public static int MissingQuantity(PlanCase plan, PartSupply supply, ReadOnlySpan<int> placing) =>
        Ahead(plan, supply, placing, supply.IsBeyondHaste);

    /// <summary>What a search weighs: the cost, and more than that for parts that cannot come.</summary>
    public static double Weighed(PlanCase plan, int[] placing) =>
        Of(plan, placing).Total + plan.MissingPrice * plan.Supplies.Sum(s => MissingQuantity(plan, s, placing));

    private static int Ahead(PlanCase plan, PartSupply supply, ReadOnlySpan<int> placing, Func<DateTimeOffset, bool> binds)
    {
        var needed = NeedByWindow(plan, supply, placing);
        var (sum, worst) = (0, 0);
        for (var w = 0; w < needed.Length; w++)
        {
            sum += needed[w];
            if (needed[w] > 0 && binds(plan.Windows[w].Start))
                worst = Math.Max(worst, sum - supply.Spare.AvailableAt(plan.Windows[w].Start));
        }

        return worst;
    }

    /// <summary>The hours of work that a crew's turn is given.</summary>
    public static double WorkIn(PlanCase plan, CrewTurn turn, int[] placing) =>
        placing.Select((place, u) => turn.Windows.Contains(place) ? plan.Units[u].CrewHours : 0).Sum();

    public static int[] NeedByWindow(PlanCase plan, PartSupply supply, ReadOnlySpan<int> placing)
    {
        var needed = new int[plan.Windows.Length];
        for (var u = 0; u < placing.Length; u++)
        {
            if (placing[u] != PlanCase.Later) needed[placing[u]] += plan.Units[u].Needs.GetValueOrDefault(supply.Part);
        }

        return needed;
    }

    private static double ExpressCost(PlanCase plan, ReadOnlySpan<int> placing)
    {
        var sum = 0.0;
        foreach (var supply in plan.Supplies)
            sum += plan.Input.Costs.ExpressShare * supply.Spare.Price * ExpressQuantity(plan, supply, placing);
        return sum;
    }

    private static double Share(double part, double whole) => whole > 0 ? part / whole : 0;
}
