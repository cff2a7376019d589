using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Plans;

/// <summary>
/// Chains that are swapped together: one chain, the parallel strands of a drive, or the set from which one load hangs.
/// </summary>
internal sealed class SwapUnit
{
    public SwapUnit(IReadOnlyList<SwapTask> tasks)
    {
        Tasks = tasks;
        Name = tasks[0].Chain;
        Line = tasks[0].Line;
        Hours = tasks.Max(t => t.Hours);
        CrewHours = tasks.Sum(t => t.CrewHours);
        MeasureFirst = tasks.All(t => t.MeasureFirst);
        OutOfUseBy = tasks.Min(t => t.OutOfUseBy);
        Needs = tasks.SelectMany(t => t.Needs).GroupBy(n => n.Part).ToDictionary(g => g.Key, g => g.Sum(n => n.Quantity));
    }

    public IReadOnlyList<SwapTask> Tasks { get; }

    public string Name { get; }

    public string Line { get; }

    /// <summary>How long the line must stand for it; parallel strands are swapped side by side.</summary>
    public double Hours { get; }

    public double CrewHours { get; }

    /// <summary>Whether none of them has a reading to plan by.</summary>
    public bool MeasureFirst { get; }

    /// <summary>The hard date of the first of them: one that must go takes its set along.</summary>
    public DateTimeOffset? OutOfUseBy { get; }

    public IReadOnlyDictionary<Part, int> Needs { get; }
}
