namespace WearWatch.Planning.Plans;

/// <summary>
/// Answers at once what placements cost and what moving one swap would change. Made once for an input, asked often.
/// </summary>
/// <remarks>
/// Placements are the window's id by the chain's name; a chain that is not named, or a window that is gone, means not in the
/// horizon.
/// </remarks>
public sealed class SwapCosting
{
    private readonly PlanCase plan;
    private readonly Dictionary<string, int> unitOf;

    /// <summary>Works out the cost of each swap in each window.</summary>
    public SwapCosting(PlanInput input)
    {
        plan = new PlanCase(input);
        unitOf = plan.Units.SelectMany((unit, u) => unit.Tasks.Select(t => (t.Chain, u))).ToDictionary(x => x.Chain, x => x.u);
    }

    /// <summary>What it was made from.</summary>
    public PlanInput Input => plan.Input;

    /// <summary>What placements cost in expectation, and where they hurt.</summary>
    public SwapPlan Count(IReadOnlyDictionary<string, string?> placements) => SwapPlan.Of(plan, PlacingOf(placements));

    /// <summary>The chains that are swapped together with a chain, itself among them.</summary>
    public IReadOnlyList<string> Together(string chain) => [.. plan.Units[unitOf[chain]].Tasks.Select(t => t.Chain)];

    /// <summary>
    /// The moment after which a chain, or another of those that are swapped with it, must not be used; null without one.
    /// </summary>
    public DateTimeOffset? OutOfUseBy(string chain) => plan.Units[unitOf[chain]].OutOfUseBy;

    /// <summary>Whether a chain that holds a load would be left past its hard date in a window.</summary>
    public bool IsTooLate(string chain, string? windowId) =>
        plan.Input.Windows.Any(w => w.Id == windowId && !HardDate.Keeps(plan.Units[unitOf[chain]], w));

    /// <summary>
    /// What it would change to move a chain, with those that go with it, to each window of its line before its hard
    /// date, and out of the horizon.
    /// </summary>
    public IReadOnlyList<SwapMove> MovesOf(string chain, IReadOnlyDictionary<string, string?> placements)
    {
        var (u, placing) = (unitOf[chain], new Placing(plan, PlacingOf(placements)));
        var before = placing.Cost;
        return [.. plan.WindowsOf[u].Append(PlanCase.Later).Select(place =>
        {
            placing.Move(u, place);
            return new SwapMove(
                place == PlanCase.Later ? null : plan.Windows[place], placing.Cost - before, plan.OwnOf(u, place),
                place == PlanCase.Later ? plan.OutOfUseFrom[u] : null,
                place == PlanCase.Later ? null : Preparation.WhyNot(plan, u, place));
        })];
    }

    /// <summary>Why a chain stands where it does, beside the shutdown before and the one after.</summary>
    public SwapReason WhyHere(string chain, IReadOnlyDictionary<string, string?> placements)
    {
        var (u, placing) = (unitOf[chain], PlacingOf(placements));
        var moves = MovesOf(chain, placements); // by time; the place beyond the horizon is the last
        var at = Array.IndexOf([.. plan.WindowsOf[u], PlanCase.Later], placing[u]);
        return new SwapReason
        {
            Here = moves[at],
            Earlier = at > 0 ? Beside(at - 1) : null,
            Later = at < moves.Count - 1 ? Beside(at + 1) : null,
            NotAfter = at == moves.Count - 2 && plan.OutOfUseFrom[u] is not null ? plan.Units[u].OutOfUseBy : null,
        };

        SwapNeighbour Beside(int other)
        {
            int[] moved = [.. placing];
            moved[u] = other < plan.WindowsOf[u].Length ? plan.WindowsOf[u][other] : PlanCase.Later;
            var (before, after) = (PlanCosting.Of(plan, placing), PlanCosting.Of(plan, moved));
            return new SwapNeighbour(moves[other], [.. Enum.GetValues<CostCause>()
                .Select(cause => (cause, after.Of(cause) - before.Of(cause))).Where(d => Math.Abs(d.Item2) >= 0.5)
                .OrderByDescending(d => Math.Abs(d.Item2))]);
        }
    }

    /// <summary>
    /// What it would change to move each chain that has a window to its line's next one; chains without a next one are left out.
    /// </summary>
    public IReadOnlyDictionary<string, double> CostsOfWaiting(IReadOnlyDictionary<string, string?> placements)
    {
        var placing = new Placing(plan, PlacingOf(placements));
        var (before, costs) = (placing.Cost, new Dictionary<string, double>());
        for (var u = 0; u < plan.Units.Length; u++)
        {
            var (from, next) = (placing[u], Array.IndexOf(plan.WindowsOf[u], placing[u]) + 1);
            if (from == PlanCase.Later || next >= plan.WindowsOf[u].Length) continue;
            placing.Move(u, plan.WindowsOf[u][next]);
            foreach (var task in plan.Units[u].Tasks) costs[task.Chain] = placing.Cost - before;
            placing.Move(u, from);
        }

        return costs;
    }

    private int[] PlacingOf(IReadOnlyDictionary<string, string?> placements) => [.. plan.Units.Select((unit, u) =>
        placements.GetValueOrDefault(unit.Name) is { } id
            ? plan.WindowsOf[u].FirstOrDefault(w => plan.Windows[w].Id == id, PlanCase.Later)
            : PlanCase.Later)];
}
