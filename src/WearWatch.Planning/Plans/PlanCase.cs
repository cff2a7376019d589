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
        HoursAt = HoursAheadOf(input, Windows);
        HoursAfter = input.Calendar.Between(input.Now, input.HorizonEnd + input.Costs.NextChance).Hours;
        WindowsOf = [.. Units.Select(u => Enumerable.Range(0, Windows.Length).Where(w => Windows[w].Line == u.Line).ToArray())];
        Own = [.. Units.Select((u, i) =>
            WindowsOf[i].ToDictionary(w => w, w => Sum(u, t => OwnCost.Of(t, HoursAt[w], input.Costs))))];
        OwnLater = [.. Units.Select(u => Sum(u, t => OwnCost.After(t, HoursAfter, input.Costs)))];
        Turns = [.. Windows.Select((w, i) => (Window: w, Index: i)).GroupBy(x => x.Window.CrewTurn)
            .Select(g => new CrewTurn(g.Key, [.. g.Select(x => x.Index)], g.Max(x => x.Window.CrewHours)))];
        Supplies = [.. Units.SelectMany(u => u.Needs.Keys).Distinct()
            .OrderBy(p => p.Designation, StringComparer.Ordinal).ThenBy(p => p.Kind)
            .SelectMany(p => input.Spares.Where(s => s.Part == p).Take(1)).Select(s => new PartSupply(s, input.Now))];
        Fixed = [.. Units.Select(KeptPlaceOf)];
        OwnTotal = [.. Own.Select(places => places.ToDictionary(p => p.Key, p => p.Value.Total)).Select(AsArray)];
        LaterTotal = [.. Units.Select((u, i) => OwnLater[i].Total + input.Costs.StopOf(u.Line))];
        Worthwhile = [.. WindowsOf.Select((windows, u) => windows.Where(w => OwnTotal[u][w] < LaterTotal[u]).ToArray())];
        WindowHours = [.. Windows.Select(w => w.Length.TotalHours)];
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

    /// <summary>The windows of each unit's line.</summary>
    public int[][] WindowsOf { get; }

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

    /// <summary>
    /// The windows of each unit in which it costs less by itself than later; no other can be in a cheapest plan.
    /// </summary>
    public int[][] Worthwhile { get; }

    public double[] WindowHours { get; }

    public double[] StoppedPerHour { get; }

    public double[] StopCost { get; }

    public OwnCost OwnOf(int unit, int place) => place == Later ? OwnLater[unit] : Own[unit][place];

    private static OwnCost Sum(SwapUnit unit, Func<SwapTask, OwnCost> cost) => unit.Tasks.Select(cost).Aggregate(OwnCost.Add);

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
