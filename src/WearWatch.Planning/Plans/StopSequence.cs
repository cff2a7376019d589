using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Plans;

/// <summary>In which order the swaps of one stop are done, and by which of the fitters.</summary>
/// <remarks>
/// Chains with a hard date come first, the strands of one drive after each other; the others by the longest first [98], each as
/// soon as the people it needs are free. With one fitter a swap that rule is at most a third longer than the shortest course
/// there is (4/3 - 1/(3 m) for m fitters).
/// </remarks>
public static class StopSequence
{
    /// <summary>How many fitters a stop has: those whose hours the crew gives, and as many as one swap needs at once.</summary>
    /// <param name="crewHours">The crew's hours.</param>
    /// <param name="lengthH">How long the line stands.</param>
    /// <param name="tasks">The swaps.</param>
    public static int FittersOf(double crewHours, double lengthH, IEnumerable<SwapTask> tasks) =>
        Math.Max((int)Math.Round(crewHours / lengthH), tasks.Select(t => t.People).DefaultIfEmpty(1).Max());

    /// <summary>The course of a stop.</summary>
    /// <param name="tasks">Its swaps.</param>
    /// <param name="fitters">How many people there are; at least as many as one swap needs at once.</param>
    public static IReadOnlyList<StopTurn> Of(IReadOnlyList<SwapTask> tasks, int fitters)
    {
        var free = new double[fitters];
        var turns = new List<StopTurn>();
        var groups = tasks.GroupBy(t => t.ParallelGroup.Length > 0 ? $"group {t.ParallelGroup}" : $"chain {t.Chain}")
            .OrderBy(g => g.Min(t => t.OutOfUseBy) ?? DateTimeOffset.MaxValue).ThenByDescending(g => g.Max(t => t.Hours))
            .ThenBy(g => g.Key, StringComparer.Ordinal);
        foreach (var task in groups.SelectMany(
            g => g.OrderByDescending(t => t.Hours).ThenBy(t => t.Chain, StringComparer.Ordinal)))
        {
            int[] who = [.. Enumerable.Range(0, fitters).OrderBy(f => free[f]).Take(task.People).Order()];
            var start = who.Max(f => free[f]);
            foreach (var fitter in who) free[fitter] = start + task.Hours;
            turns.Add(new StopTurn(task.Chain, start, start + task.Hours, [.. who.Select(f => f + 1)]));
        }

        return [.. turns.OrderBy(t => t.StartH)];
    }
}
