using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Plans;

/// <summary>A chain that is shortened before it is replaced, and the links that join it again.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="At">When: at the last shutdown of its line before its take-up may be at its end, else on that day.</param>
/// <param name="WindowId">That shutdown; null for none.</param>
/// <param name="Needs">What it takes from the shelf.</param>
public sealed record PlannedShortening(string Chain, DateTimeOffset At, string? WindowId, IReadOnlyList<PartNeed> Needs)
{
    /// <summary>The shortening of a chain.</summary>
    /// <param name="chain">The chain's name.</param>
    /// <param name="line">Its line.</param>
    /// <param name="from">The early day on which its take-up is at its end.</param>
    /// <param name="needs">What it takes from the shelf.</param>
    /// <param name="frame">The moment and the shutdowns.</param>
    public static PlannedShortening Of(
        string chain, string line, DateTimeOffset from, IReadOnlyList<PartNeed> needs, PlanInput frame)
    {
        var stop = frame.Windows.Where(w => w.Line == line && w.Start > frame.Now && w.Start <= from).MaxBy(w => w.Start);
        return new(chain, stop?.Start ?? (from > frame.Now ? from : frame.Now), stop?.Id, needs);
    }

    /// <summary>Those of an input that a plan leaves: a chain that is replaced by then is not shortened.</summary>
    public static IReadOnlyList<PlannedShortening> LeftBy(SwapPlan plan, PlanInput input)
    {
        var swaps = plan.Placements.ToDictionary(p => p.Chain, p => p.Window?.Start);
        return [.. input.Shortenings.Where(s => !(swaps.GetValueOrDefault(s.Chain) <= s.At))];
    }
}
