using Google.OrTools.LinearSolver;

namespace WearWatch.Planning.Plans;

/// <summary>The plan as a mixed-integer program: exactly one place for each unit, and soft limits, so that it always has an answer.</summary>
/// <remarks>
/// x[u,w] puts unit u into window w; stop[w] is at least every x in it; overtime, overruns and express parts take up what does not
/// fit, at their price. Only x is whole: the others follow from it.
/// </remarks>
internal sealed class SwapModel : IDisposable
{
    private readonly PlanCase plan;
    private readonly Solver solver;
    private readonly List<(int Place, Variable Chosen)>[] places;
    private readonly List<(int Unit, Variable Chosen)>[] inWindow;

    public SwapModel(PlanCase plan)
    {
        this.plan = plan;
        solver = Solver.CreateSolver("CBC");
        solver.SetNumThreads(1); // more threads would make the answer depend on their race
        inWindow = [.. plan.Windows.Select(_ => new List<(int, Variable)>())];
        places = [.. Enumerable.Range(0, plan.Units.Length).Select(AddUnit)];
        for (var w = 0; w < plan.Windows.Length; w++) AddWindow(w);
        foreach (var turn in plan.Turns) AddTurn(turn);
        foreach (var supply in plan.Supplies) AddSupply(supply);
        solver.Objective().SetMinimization();
    }

    /// <summary>No plan costs less than this.</summary>
    public double Bound { get; private set; }

    /// <summary>Whether the solve came to its gap before time was up.</summary>
    public bool HasEnded { get; private set; }

    /// <summary>Solves to the gap or until time is up; null when no answer was found in time.</summary>
    public int[]? Solve(double gap, TimeSpan timeLimit)
    {
        solver.SetTimeLimit((long)timeLimit.TotalMilliseconds);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, gap);
        var status = solver.Solve(parameters);
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE)) return null;
        Bound = solver.Objective().BestBound();
        HasEnded = status == Solver.ResultStatus.OPTIMAL;
        return [.. places.Select(p => p.MaxBy(x => x.Chosen.SolutionValue()).Place)];
    }

    /// <summary>Asks a solve that runs on another thread to end; false when this engine cannot.</summary>
    public bool Interrupt() => solver.InterruptSolve();

    public void Dispose() => solver.Dispose();

    private List<(int, Variable)> AddUnit(int u)
    {
        var one = solver.MakeConstraint(1, 1);
        var list = new List<(int, Variable)>();
        foreach (var w in plan.Fixed[u] is { } place ? [place] : plan.Worthwhile[u].Append(PlanCase.Later))
        {
            var x = solver.MakeBoolVar("");
            one.SetCoefficient(x, 1);
            solver.Objective().SetCoefficient(x, w == PlanCase.Later ? plan.LaterTotal[u] : plan.OwnTotal[u][w]);
            if (w != PlanCase.Later) inWindow[w].Add((u, x));
            list.Add((w, x));
        }

        return list;
    }

    private void AddWindow(int w)
    {
        if (inWindow[w].Count == 0) return;
        var window = plan.Windows[w];
        var stop = Cost(1, plan.Input.Costs.StopOf(window.Line));
        foreach (var (_, x) in inWindow[w]) AtLeast(stop, (x, 1));
        var tooLong = inWindow[w].Where(p => plan.Units[p.Unit].Hours > window.Length.TotalHours).ToArray();
        if (tooLong.Length == 0) return;
        var overrun = Cost(double.PositiveInfinity, plan.Input.Costs.StoppedPerHour(window.Line));
        foreach (var (u, x) in tooLong) AtLeast(overrun, (x, plan.Units[u].Hours - window.Length.TotalHours));
    }

    private void AddTurn(CrewTurn turn)
    {
        var work = turn.Windows.SelectMany(w => inWindow[w]).Select(p => (p.Chosen, plan.Units[p.Unit].CrewHours)).ToArray();
        if (work.Sum(p => p.CrewHours) <= turn.Hours) return;
        AtMost(turn.Hours, Cost(double.PositiveInfinity, plan.Input.Costs.OvertimePerHour), work);
    }

    private void AddSupply(PartSupply supply)
    {
        var express = Cost(double.PositiveInfinity, plan.Input.Costs.ExpressShare * supply.Spare.Price);
        var taken = new List<(Variable, double)>();
        for (var w = 0; w < plan.Windows.Length && supply.Binds(plan.Windows[w].Start); w++)
        {
            var here = inWindow[w].Select(p => (p.Chosen, Need: (double)plan.Units[p.Unit].Needs.GetValueOrDefault(supply.Part)))
                .Where(p => p.Need > 0).ToArray();
            if (here.Length == 0) continue;
            taken.AddRange(here);
            AtMost(supply.Spare.AvailableAt(plan.Windows[w].Start), express, taken);
        }
    }

    private Variable Cost(double upTo, double each)
    {
        var amount = solver.MakeNumVar(0, upTo, "");
        solver.Objective().SetCoefficient(amount, each);
        return amount;
    }

    private void AtLeast(Variable amount, (Variable X, double Weight) part) => AtMost(0, amount, [part]);

    private void AtMost(double limit, Variable beyond, IEnumerable<(Variable X, double Weight)> parts)
    {
        var row = solver.MakeConstraint(double.NegativeInfinity, limit);
        row.SetCoefficient(beyond, -1);
        foreach (var (x, weight) in parts) row.SetCoefficient(x, weight);
    }
}
