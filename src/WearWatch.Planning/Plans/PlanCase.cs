using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Plans;

/// <summary>
/// A plan's input made ready: units, windows in order, the cost of each unit in each window, what crews and store can give.
/// </summary>
/// <remarks>A placing gives each unit the index of its window, or <see cref="Later"/>.</remarks>
internal sealed class PlanCase
{
    /// <summary>Not in the horizon.</summary>
    public const int Later = -1;

    public PlanCase(PlanInput input)
    {
        Input = input;
        Units = [.. input.Tasks
            .GroupBy(t => t.ParallelGroup.Length == 0 ? (t.Line, "chain", t.Chain) : (t.Line, "group", t.ParallelGroup))
            .Select(g => new SwapUnit([.. g.OrderBy(t => t.Chain, StringComparer.Ordinal)]))
            .OrderBy(u => u.Name, StringComparer.Ordinal)];
        Windows = [.. input.Windows
            .Where(w => w.Start >= input.Now && w.Start < input.HorizonEnd)
            .OrderBy(w => w.Start).ThenBy(w => w.Id, StringComparer.Ordinal)];
        WindowHours = [.. Windows.Select(w => w.Length.TotalHours)];
        HoursAt = HoursAheadOf(input, Windows);
        HoursAfter = input.Calendar.Between(input.Now, input.HorizonEnd + input.Costs.NextChance).Hours;
        WindowsOf = [.. Units.Select(u =>
            Enumerable.Range(0, Windows.Length).Where(w => Windows[w].Line == u.Line && HardDate.Keeps(u, Windows[w]))
                .ToArray())];
        OutOfUseFrom = [.. Units.Select(u => HardDate.OutOfUseFrom(u, input))];
        Own = [.. Units.Select((u, i) =>
            WindowsOf[i].ToDictionary(w => w, w => Sum(u, t => OwnCost.Of(t, HoursAt[w], input.Costs))))];
        OwnLater = [.. Units.Select((u, i) => Sum(u, t => OwnCost.After(t, HoursInUse(i), input.Costs)))];
        Turns = [.. Windows.Select((w, i) => (Window: w, Index: i)).GroupBy(x => x.Window.CrewTurn)
            .Select(g => new CrewTurn(
                g.Key, g.First().Window.Crew is { Length: > 0 } crew ? crew : g.Key, [.. g.Select(x => x.Index)],
                g.Max(x => x.Window.CrewHours)))];
        Supplies = [.. Units.SelectMany(u => u.Needs.Keys).Distinct()
            .OrderBy(p => p.Designation, StringComparer.Ordinal).ThenBy(p => p.Kind)
            .SelectMany(p => input.Spares.Where(s => s.Part == p).Take(1)).Select(s => new PartSupply(s, input.Now))];
        Fixed = [.. Units.Select(KeptPlaceOf)];
        OwnTotal = [.. Own.Select(places => places.ToDictionary(p => p.Key, p => p.Value.Total)).Select(AsArray)];
        OutOfUseCost = [.. Units.Select((u, i) => OutOfUseFrom[i] is null ? 0 : input.Costs.OutOfUseOf(u.Line))];
        LaterTotal = [.. Units.Select((u, i) => OwnLater[i].Total + input.Costs.StopOf(u.Line) + OutOfUseCost[i])];
        MissingPrice = 1 + LaterTotal.DefaultIfEmpty().Max();
        Workable = [.. WindowsOf.Select((windows, u) => windows
            .Where(w => OutOfUseFrom[u] is null ? Preparation.WhyNot(this, u, w) is null : HardDate.Lacks(this, u, w) is null)
            .ToHashSet())];
        Worthwhile = [.. WindowsOf.Select((windows, u) => windows
            .Where(w => Workable[u].Contains(w) && (OutOfUseFrom[u] is not null || OwnTotal[u][w] < LaterTotal[u]))
            .ToArray())];
        StoppedPerHour = [.. Windows.Select(w => input.Costs.StoppedPerHour(w.Line))];
        StopCost = [.. Windows.Select(w => input.Costs.StopOf(w.Line))];
    }

    public PlanInput Input { get; }

    public SwapUnit[] Units { get; }

    public ShutdownWindow[] Windows { get; }

    /// <summary>Running hours from now until each window.</summary>
    public double[] HoursAt { get; }

    /// <summary>Running hours from now until the next chance after the horizon.</summary>
    public double HoursAfter { get; }

    /// <summary>The windows of each unit's line that begin by its hard date, if it has one.</summary>
    public int[][] WindowsOf { get; }

    /// <summary>From when a unit without a window is out of use; null where it runs until its next chance.</summary>
    public DateTimeOffset?[] OutOfUseFrom { get; }

    public Dictionary<int, OwnCost>[] Own { get; }

    public OwnCost[] OwnLater { get; }

    public CrewTurn[] Turns { get; }

    public PartSupply[] Supplies { get; }

    /// <summary>Where a unit must stay; null where the planner is free.</summary>
    public int?[] Fixed { get; }

    /// <summary>The units' own costs by window; not a number where the window is another line's.</summary>
    public double[][] OwnTotal { get; }

    /// <summary>What it costs to leave a unit until after the horizon: its own cost and a stop of its own.</summary>
    public double[] LaterTotal { get; }

    /// <summary>What it costs that a unit left until then is out of use from its hard date.</summary>
    public double[] OutOfUseCost { get; }

    /// <summary>
    /// What a search weighs for each piece that cannot come in time: more than leaving any one swap out costs, so that no
    /// proposal plans a swap without its parts.
    /// </summary>
    public double MissingPrice { get; }

    /// <summary>The windows into which a proposal may put each unit: those in which its swap can be carried out.</summary>
    public HashSet<int>[] Workable { get; }

    /// <summary>
    /// Of these the ones in which it costs less by itself than later; no other can be in a cheapest plan. For a unit that would
    /// be out of use by then, all of them.
    /// </summary>
    public int[][] Worthwhile { get; }

    public double[] WindowHours { get; }

    public double[] StoppedPerHour { get; }

    public double[] StopCost { get; }

    /// <summary>Whether a proposal may leave a unit without a window: not when it were out of use although one fits.</summary>
    public bool MayWait(int unit) => OutOfUseFrom[unit] is null || Worthwhile[unit].Length == 0;

    /// <summary>Whether a proposal may put a unit into a place of its line.</summary>
    public bool MayStand(int unit, int place) => place == Later
        ? MayWait(unit)
        : Workable[unit].Contains(place);

    /// <summary>The places from which a proposal chooses for a unit.</summary>
    public IEnumerable<int> ChoicesOf(int unit) => Fixed[unit] is { } kept ? [kept]
        : MayWait(unit) ? Worthwhile[unit].Append(Later)
        : Worthwhile[unit];

    public OwnCost OwnOf(int unit, int place) => place == Later ? OwnLater[unit] : Own[unit][place];

    /// <summary>What a unit costs in a place by itself, with the stop of its own that it needs after the horizon.</summary>
    public double TotalOf(int unit, int place) => place == Later ? LaterTotal[unit] : OwnTotal[unit][place];

    private static OwnCost Sum(SwapUnit unit, Func<SwapTask, OwnCost> cost) => unit.Tasks.Select(cost).Aggregate(OwnCost.Add);

    /// <summary>Running hours for which a unit without a window is left on.</summary>
    public double HoursInUse(int unit) =>
        OutOfUseFrom[unit] is { } from ? Input.Calendar.Between(Input.Now, from).Hours : HoursAfter;

    private double[] AsArray(Dictionary<int, double> costs)
    {
        var all = new double[Windows.Length];
        Array.Fill(all, double.NaN);
        foreach (var (w, cost) in costs) all[w] = cost;
        return all;
    }

    private static double[] HoursAheadOf(PlanInput input, ShutdownWindow[] windows)
    {
        var known = new Dictionary<DateTimeOffset, double>();
        return [.. windows.Select(w => known.TryGetValue(w.Start, out var hours)
            ? hours
            : known[w.Start] = input.Calendar.Between(input.Now, w.Start).Hours)];
    }

    private int? KeptPlaceOf(SwapUnit unit, int index)
    {
        foreach (var task in unit.Tasks)
        {
            if (!Input.Kept.TryGetValue(task.Chain, out var id)) continue;
            if (id is null) return Later;
            var place = Array.FindIndex(Windows, w => w.Id == id);
            if (place >= 0 && WindowsOf[index].Contains(place)) return place;
        }

        return null;
    }
}
