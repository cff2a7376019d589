namespace WearWatch.Planning.Plans;

/// <summary>
/// Looks for a cheaper placing by simulated annealing: dearer moves are allowed, ever more seldom as the temperature falls.
/// </summary>
/// <remarks>
/// S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Science 220 (1983) 671 (from memory). A move puts one unit elsewhere, exchanges
/// the dates of two, or takes a whole stop of a line to another window. One walk may end a percent or two above another, so
/// several are made and the best is taken. The number of walks and moves and the seeds are fixed, so the same input gives the
/// same placing.
/// </remarks>
internal sealed class Annealing
{
    private const int Walks = 4;
    private const int MovesPerUnit = 12_000;
    private const int Seed = 20260302;

    private readonly PlanCase plan;
    private readonly Placing placing;
    private readonly int[] free;
    private readonly int[][] matesOf;
    private readonly Random dice;
    private readonly List<(int Unit, int From)> done = [];

    private Annealing(PlanCase plan, IReadOnlyList<int> start, int seed)
    {
        this.plan = plan;
        dice = new Random(seed);
        placing = new Placing(plan, start);
        matesOf = [.. plan.Units.Select((unit, u) =>
            Enumerable.Range(0, plan.Units.Length).Where(v => v != u && plan.Units[v].Line == unit.Line).ToArray())];
        free = [.. Enumerable.Range(0, plan.Units.Length).Where(u => plan.Fixed[u] is null && plan.Worthwhile[u].Length > 0)];
    }

    /// <summary>The best placing met on the walks from a start; never dearer than the start.</summary>
    public static int[] From(PlanCase plan, IReadOnlyList<int> start, CancellationToken stop) =>
        ParallelEnumerable.Range(0, Walks).AsOrdered().WithCancellation(stop)
            .Select(walk => new Annealing(plan, start, Seed + walk).Run(stop))
            .ToArray().MinBy(end => end.Cost).Placing;

    private (int[] Placing, double Cost) Run(CancellationToken stop)
    {
        var (best, bestCost) = (placing.ToArray(), placing.Total);
        if (free.Length == 0) return (best, bestCost);
        // From about what a stop costs down to what nobody would notice.
        var (hot, cold) =
            (Math.Max(1, placing.Total / plan.Units.Length / 2), Math.Max(0.01, placing.Total / plan.Units.Length / 100));
        var moves = MovesPerUnit * free.Length;
        for (var i = 0; i < moves; i++)
        {
            if (i % 4096 == 0) stop.ThrowIfCancellationRequested();
            var temperature = hot * Math.Pow(cold / hot, (double)i / moves);
            var before = placing.Total;
            done.Clear();
            Try();
            if (placing.Total - before > -temperature * Math.Log(1 - dice.NextDouble())) Undo();
            else if (placing.Total < bestCost - 1e-6) (best, bestCost) = (placing.ToArray(), placing.Total);
        }

        return (best, bestCost);
    }

    private void Try()
    {
        var u = free[dice.Next(free.Length)];
        switch (dice.Next(10))
        {
            case < 4: Move(u, AnyPlaceOf(u)); break;
            case < 6: Join(u); break;
            case < 8: Exchange(u, free[dice.Next(free.Length)]); break;
            default: MoveStop(u); break;
        }
    }

    private int AnyPlaceOf(int u) => dice.Next(plan.Worthwhile[u].Length + (plan.MayWait(u) ? 1 : 0)) is var i
        && i < plan.Worthwhile[u].Length
        ? plan.Worthwhile[u][i]
        : PlanCase.Later;

    /// <summary>Goes to where another unit of the line is, so that both share a stop.</summary>
    private void Join(int u)
    {
        var mates = matesOf[u];
        if (mates.Length > 0 && placing[mates[dice.Next(mates.Length)]] is var place
            && (place == PlanCase.Later ? plan.MayWait(u) : plan.Worthwhile[u].Contains(place)))
            Move(u, place);
    }

    private void Exchange(int u, int v)
    {
        var (a, b) = (SameDate(u, placing[v]), SameDate(v, placing[u]));
        if (a is not { } toA || b is not { } toB) return;
        Move(u, toA);
        Move(v, toB);
    }

    private int? SameDate(int u, int place)
    {
        if (place == PlanCase.Later) return plan.MayWait(u) ? PlanCase.Later : null;
        foreach (var w in plan.Worthwhile[u])
        {
            if (plan.Windows[w].Start == plan.Windows[place].Start) return w;
        }

        return null;
    }

    private void MoveStop(int u)
    {
        if (placing[u] == PlanCase.Later) return;
        var to = AnyPlaceOf(u);
        foreach (var other in placing.UnitsIn(placing[u]).ToArray())
        {
            if (plan.Fixed[other] is null && plan.MayStand(other, to)) Move(other, to);
        }
    }

    private void Move(int u, int place)
    {
        done.Add((u, placing[u]));
        placing.Move(u, place);
    }

    private void Undo()
    {
        for (var i = done.Count - 1; i >= 0; i--) placing.Move(done[i].Unit, done[i].From);
    }
}
