using WearWatch.Planning.Plans;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>
/// Slow oracle: every way to place every chain that is not kept somewhere, each counted by <see cref="SwapCosting.Count"/>. A
/// chain with a hard date stands in a shutdown that fits, or in none where there is no such.
/// </summary>
internal static class EveryPlan
{
    public static (double Cost, IReadOnlyDictionary<string, string?> Placements) CheapestOf(
        PlanInput input, Func<IReadOnlyDictionary<string, string?>, bool>? isAllowed = null)
    {
        var best = (Cost: double.PositiveInfinity,
            Placements: (IReadOnlyDictionary<string, string?>)new Dictionary<string, string?>());
        foreach (var placements in Ways(input).Where(way => isAllowed is null || isAllowed(way)))
        {
            if (new SwapCosting(input).Count(placements).Cost.Total is var cost && cost < best.Cost) best = (cost, placements);
        }

        return best;
    }

    private static IEnumerable<Dictionary<string, string?>> Ways(PlanInput input)
    {
        var units = input.Tasks.GroupBy(t => t.ParallelGroup.Length == 0 ? t.Chain : t.Line + t.ParallelGroup)
            .Select(g => g.ToArray()).ToArray();
        var choices = units.Select(u =>
            u.Where(t => input.Kept.ContainsKey(t.Chain)).Select(t => input.Kept[t.Chain]).ToArray() is [var kept, ..]
            ? [kept]
            : PlacesOf(input, u)).ToArray();
        var count = choices.Aggregate(1, (n, c) => n * c.Length);
        for (var way = 0; way < count; way++)
        {
            var (rest, placements) = (way, new Dictionary<string, string?>());
            for (var u = 0; u < units.Length; u++)
            {
                foreach (var task in units[u]) placements[task.Chain] = choices[u][rest % choices[u].Length];
                rest /= choices[u].Length;
            }

            yield return placements;
        }
    }

    private static string?[] PlacesOf(PlanInput input, SwapTask[] unit) =>
        unit.Min(t => t.OutOfUseBy) is not { } by || by > input.HorizonEnd + input.Costs.NextChance
            ? [null, .. input.Windows.Where(w => w.Line == unit[0].Line).Select(w => w.Id)]
        : RandomHoists.Fitting(input, unit, by) is { Length: > 0 } fitting ? [.. fitting.Select(w => w.Id)]
        : [null];
}
