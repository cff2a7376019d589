using Google.OrTools.LinearSolver;

namespace WearWatch.Planning.Plans;

/// <summary>
/// The plan as a mixed-integer program: exactly one place for each unit, and soft limits, so that it always has an answer.
/// </summary>
/// <remarks>
/// x[u,w] puts unit u into window w; stop[w] is at least every x in it; early[u,d] says that u is swapped by date d, so that a
/// row of supply is a knapsack over units and not over units times windows; overtime, overruns and express parts take up what
/// does not fit, at their price. Only x must be whole; stop and early are declared whole too, since a branch on "line 3 stops in
/// week 7" or "swapped before the delivery" divides the plans more evenly than one on "unit 5 in week 7", and cuts are found on
/// shorter rows.
/// </remarks>
internal sealed class SwapModel : IDisposable
{
    private readonly PlanCase plan;
    private readonly Solver solver;
    private readonly Dictionary<Variable, double> start = [];
    private readonly List<(int Place, Variable Chosen)>[] places;
    private readonly List<(int Unit, Variable Chosen)>[] inWindow;

    /// <summary>States the program, with a placing to start from, so that the solver need only look for cheaper ones.</summary>
    public SwapModel(PlanCase plan, IReadOnlyList<int> placing)
    {
        this.plan = plan;
        solver = Solver.CreateSolver("SCIP");
        inWindow = [.. plan.Windows.Select(_ => new List<(int, Variable)>())];
        places = [.. Enumerable.Range(0, plan.Units.Length).Select(u => AddUnit(u, placing[u]))];
        for (var w = 0; w < plan.Windows.Length; w++) AddWindow(w);
        foreach (var turn in plan.Turns) AddTurn(turn);
        foreach (var supply in plan.Supplies) AddSupply(supply);
        solver.Objective().SetMinimization();
        solver.SetHint([.. start.Keys], [.. start.Values]);
    }

    /// <summary>No plan costs less than this.</summary>
    public double Bound { get; private set; }

    /// <summary>Whether the solve came to its gap before time was up.</summary>
    public bool HasEnded { get; private set; }

    /// <summary>Solves, on one thread, to the gap or until time is up; null when no answer was found in time.</summary>
    public int[]? Solve(double gap, TimeSpan timeLimit)
    {
        solver.SetTimeLimit((long)timeLimit.TotalMilliseconds);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, gap);
        // this process's processor time: other programs must not end it sooner
        solver.SetSolverSpecificParametersAsString("timing/clocktype = 1");
        var status = solver.Solve(parameters);
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE)) return null;
        Bound = solver.Objective().BestBound();
        HasEnded = status == Solver.ResultStatus.OPTIMAL;
        return [.. places.Select(p => p.MaxBy(x => x.Chosen.SolutionValue()).Place)];
    }

    /// <summary>Asks a solve that runs on another thread to end; false when the engine cannot.</summary>
    public bool Interrupt() => solver.InterruptSolve();

    public void Dispose() => solver.Dispose();

    private List<(int, Variable)> AddUnit(int u, int startPlace)
    {
        var one = solver.MakeConstraint(1, 1);
        var list = new List<(int, Variable)>();
        foreach (var w in plan.ChoicesOf(u))
        {
            var x = Choice(plan.TotalOf(u, w));
            start[x] = w == startPlace ? 1 : 0;
            one.SetCoefficient(x, 1);
            if (w != PlanCase.Later) inWindow[w].Add((u, x));
            list.Add((w, x));
        }

        return list;
    }

    private void AddWindow(int w)
    {
        if (inWindow[w].Count == 0) return;
        var stop = Choice(plan.StopCost[w]);
        foreach (var (_, x) in inWindow[w]) AtMost(0, stop, [(x, 1)]);
        var tooLong = inWindow[w].Where(p => plan.Units[p.Unit].Hours > plan.WindowHours[w]).ToArray();
        if (tooLong.Length == 0) return;
        var overrun = Amount(plan.StoppedPerHour[w]);
        foreach (var (u, x) in tooLong) AtMost(0, overrun, [(x, plan.Units[u].Hours - plan.WindowHours[w])]);
    }

    private void AddTurn(CrewTurn turn)
    {
        var work = turn.Windows.SelectMany(w => inWindow[w]).Select(p => (p.Chosen, plan.Units[p.Unit].CrewHours)).ToArray();
        if (work.Sum(p => p.CrewHours) <= turn.Hours) return;
        AtMost(turn.Hours, Amount(plan.Input.Costs.OvertimePerHour), work);
    }

    private void AddSupply(PartSupply supply)
    {
        var starts = plan.Windows.Select(w => w.Start).ToArray();
        AddSupply(supply, [.. supply.LastDatesBeforeMore(starts)], plan.Input.Costs.ExpressShare * supply.Spare.Price);
        AddSupply(supply, [.. supply.LastDatesBeyondHaste(starts)], plan.MissingPrice);
    }

    private void AddSupply(PartSupply supply, (DateTimeOffset Date, int Available)[] dates, double each)
    {
        if (dates.Length == 0) return;
        var beyond = Amount(each);
        foreach (var (date, available) in dates)
        {
            var needs = Enumerable.Range(0, plan.Units.Length).Where(u => plan.Units[u].Needs.ContainsKey(supply.Part))
                .Select(u => (Early(u, date), (double)plan.Units[u].Needs[supply.Part])).ToArray();
            AtMost(available, beyond, needs);
        }
    }

    /// <summary>Whether a unit is swapped by a date.</summary>
    private Variable Early(int u, DateTimeOffset date)
    {
        var early = Choice(0);
        var same = solver.MakeConstraint(0, 0);
        same.SetCoefficient(early, -1);
        var by = places[u].Where(p => p.Place != PlanCase.Later && plan.Windows[p.Place].Start <= date).Select(p => p.Chosen)
            .ToArray();
        foreach (var x in by) same.SetCoefficient(x, 1);
        start[early] = by.Sum(x => start[x]);
        return early;
    }

    private Variable Choice(double cost) => Costed(solver.MakeBoolVar(""), cost);

    private Variable Amount(double each) => Costed(solver.MakeNumVar(0, double.PositiveInfinity, ""), each);

    private Variable Costed(Variable variable, double cost)
    {
        solver.Objective().SetCoefficient(variable, cost);
        start[variable] = 0;
        return variable;
    }

    /// <summary>Weights that sum to no more than a limit and what is paid for beyond it.</summary>
    private void AtMost(double limit, Variable beyond, IReadOnlyList<(Variable X, double Weight)> parts)
    {
        var row = solver.MakeConstraint(double.NegativeInfinity, limit);
        row.SetCoefficient(beyond, -1);
        foreach (var (x, weight) in parts) row.SetCoefficient(x, weight);
        start[beyond] = Math.Max(start[beyond], parts.Sum(p => p.Weight * start[p.X]) - limit);
    }
}
