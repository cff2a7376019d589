namespace WearWatch.Planning.Plans;

/// <summary>
/// A placing that is changed unit by unit while its cost is kept up to date, so that a search can try a million moves.
/// </summary>
/// <remarks>Counts by the same rules as <see cref="PlanCosting"/>; a test holds the two together over random moves.</remarks>
internal sealed class Placing
{
    private readonly PlanCase plan;
    private readonly int[] places;
    private readonly List<int>[] units;
    private readonly double[] crewHours;
    private readonly int[] turnOf;
    private readonly PartLedger[] ledgers;
    private readonly PartLedger[][] ledgersOf;

    public Placing(PlanCase plan, IReadOnlyList<int> start)
    {
        this.plan = plan;
        places = [.. start.Select(_ => PlanCase.Later)];
        units = [.. plan.Windows.Select(_ => new List<int>())];
        crewHours = new double[plan.Turns.Length];
        turnOf = new int[plan.Windows.Length];
        for (var t = 0; t < plan.Turns.Length; t++)
        {
            foreach (var w in plan.Turns[t].Windows) turnOf[w] = t;
        }

        ledgers = [.. plan.Supplies.Select(s => new PartLedger(plan, s))];
        ledgersOf = [.. plan.Units.Select(u => ledgers.Where(l => u.Needs.ContainsKey(l.Part)).ToArray())];
        Total = Enumerable.Range(0, places.Length).Sum(u => plan.TotalOf(u, PlanCase.Later));
        for (var u = 0; u < places.Length; u++) Move(u, start[u]);
    }

    /// <summary>What a search weighs: the cost of the whole placing, and more than that for parts that cannot come.</summary>
    public double Total { get; private set; }

    /// <summary>The cost of the whole placing.</summary>
    public double Cost => Total - plan.MissingPrice * ledgers.Sum(l => l.Missing);

    public int this[int unit] => places[unit];

    public IReadOnlyList<int> UnitsIn(int window) => units[window];

    public int[] ToArray() => [.. places];

    /// <summary>Puts a unit into another place.</summary>
    public void Move(int u, int place)
    {
        var from = places[u];
        if (from == place) return;
        var before = CostAround(u, from, place);
        if (from != PlanCase.Later) Take(u, from, -1);
        if (place != PlanCase.Later) Take(u, place, 1);
        places[u] = place;
        Total += CostAround(u, from, place) - before + plan.TotalOf(u, place) - plan.TotalOf(u, from);
    }

    private void Take(int u, int w, int sign)
    {
        if (sign > 0) units[w].Add(u);
        else units[w].Remove(u);
        crewHours[turnOf[w]] += sign * plan.Units[u].CrewHours;
        foreach (var ledger in ledgersOf[u]) ledger.Take(w, sign * plan.Units[u].Needs[ledger.Part]);
    }

    /// <summary>
    /// What both places cost together, beside the unit's own cost there: stops, overruns, overtime, parts.
    /// </summary>
    private double CostAround(int u, int a, int b)
    {
        var cost = WindowCost(a) + WindowCost(b) + TurnCost(a);
        if (b != PlanCase.Later && (a == PlanCase.Later || turnOf[a] != turnOf[b])) cost += TurnCost(b);
        foreach (var ledger in ledgersOf[u]) cost += ledger.Cost + plan.MissingPrice * ledger.Missing;
        return cost;
    }

    private double WindowCost(int w)
    {
        if (w == PlanCase.Later || units[w].Count == 0) return 0;
        var overrun = 0.0;
        foreach (var u in units[w]) overrun = Math.Max(overrun, plan.Units[u].Hours - plan.WindowHours[w]);
        return plan.StopCost[w] + overrun * plan.StoppedPerHour[w];
    }

    private double TurnCost(int w) => w == PlanCase.Later
        ? 0
        : plan.Input.Costs.OvertimePerHour * Math.Max(0, crewHours[turnOf[w]] - plan.Turns[turnOf[w]].Hours);
}
