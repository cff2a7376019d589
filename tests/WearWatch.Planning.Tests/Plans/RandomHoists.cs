using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>Plants drawn from a seed in which some chains hold a load, with hard dates before and after shutdowns.</summary>
internal static class RandomHoists
{
    /// <summary>Two to four chains on one or two lines, with one to three shutdowns; some swaps are kept by hand.</summary>
    public static PlanInput Plant(int seed)
    {
        var dice = new Random(seed);
        var input = A.SmallPlant(seed, 2 + dice.Next(3), 1 + dice.Next(2), 1 + dice.Next(3));
        input = input with
        {
            Tasks = [.. input.Tasks.Select(t => t with
            {
                OutOfUseBy = dice.Next(3) == 0 ? null : A.Monday.AddDays(-5 + 85 * dice.NextDouble()),
            })],
            Spares = dice.Next(3) == 0 ? [] : [.. input.Spares.Select(s => s with { InStock = dice.Next(300) })],
        };
        return input with
        {
            Kept = input.Tasks.Where(_ => dice.Next(4) == 0).ToDictionary(t => t.Chain, _ => AnyWindow(input, dice)),
        };
    }

    /// <summary>Places for all chains, whether they keep the dates or not, some in a shutdown that does not exist.</summary>
    public static Dictionary<string, string?> AnyMoves(PlanInput input, Random dice) =>
        input.Tasks.ToDictionary(t => t.Chain, _ => AnyWindow(input, dice));

    /// <summary>The chains that are swapped with a chain, itself among them: the rule told once more.</summary>
    public static IReadOnlyList<SwapTask> SetOf(PlanInput input, string chain)
    {
        var task = input.Tasks.Single(t => t.Chain == chain);
        return task.ParallelGroup.Length == 0
            ? [task]
            : [.. input.Tasks.Where(t => t.Line == task.Line && t.ParallelGroup == task.ParallelGroup)];
    }

    /// <summary>
    /// The shutdowns of a set's line that begin by a day, are long enough, and have the crew and the parts for this swap alone.
    /// </summary>
    public static ShutdownWindow[] Fitting(PlanInput input, IReadOnlyList<SwapTask> set, DateTimeOffset by) =>
        [.. input.Windows.Where(w => w.Line == set[0].Line && w.Start >= input.Now && w.Start <= by
            && set.Max(t => t.Hours) <= w.Length.TotalHours
            && set.Sum(t => t.Hours * t.People) <= input.Windows.Where(v => v.CrewTurn == w.CrewTurn).Max(v => v.CrewHours)
            && PartsAreThere(input, set, w.Start))];

    private static bool PartsAreThere(PlanInput input, IReadOnlyList<SwapTask> set, DateTimeOffset at) =>
        input.Spares.All(s => at >= input.Now + s.LeadTime || InTime(s, at) >= set.Sum(t => Needed(t, s.Part)));

    private static int InTime(Spare spare, DateTimeOffset at) =>
        spare.InStock + spare.OnOrder.Where(d => d.Due <= at).Sum(d => d.Quantity);

    private static int Needed(SwapTask task, Part part) => task.Needs.Where(n => n.Part == part).Sum(n => n.Quantity);

    private static string? AnyWindow(PlanInput input, Random dice) => dice.Next(input.Windows.Count + 2) switch
    {
        0 => null,
        1 => "gone",
        var i => input.Windows[i - 2].Id,
    };
}
