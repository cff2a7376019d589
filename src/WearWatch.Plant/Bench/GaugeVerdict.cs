using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Plant.Bench;

/// <summary>What one measurement says: by elongation, by its links and by what was found, each with its condition.</summary>
/// <remarks>
/// <c>Swap now</c> from the limit on, <c>plan a swap</c> where the expanded uncertainty reaches the limit or the rule says to
/// plan from there. A chain that lifts is judged by the upper end: out of use where the limit may be reached. docs/safety.md.
/// </remarks>
internal static class GaugeVerdict
{
    public static IReadOnlyList<(Condition Condition, Phrase Words)> Of(GaugeCalculation gauged)
    {
        List<(Condition, Phrase)> said = [gauged.HoldsLoad ? Lifting(gauged) : Other(gauged)];
        if (gauged.Links is { Verdict: var links }) said.Add((links.Condition, links.Sentence));
        said.AddRange(gauged.Found.Select(point =>
            (point.StopsTheChain ? Condition.SwapNow : Condition.PlanASwap, Phrase.Of($"Found: {point.Ask}. {point.Advice}"))));
        return said;
    }

    /// <summary>What cannot be judged is worse than what is within its limit, and better than what is not.</summary>
    public static int SeverityOf(Condition condition) => condition switch
    {
        Condition.SwapNow => 3,
        Condition.PlanASwap => 2,
        Condition.NotKnown => 1,
        _ => 0,
    };

    private static (Condition, Phrase) Other(GaugeCalculation gauged)
    {
        var (percent, limit) = (gauged.Elongation.Percent, gauged.Limit.Percent);
        if (gauged.Doubt is { } doubt) return (Condition.NotKnown, doubt);
        if (percent >= limit) return (Condition.SwapNow, $"{percent:0.00} % has reached the limit of {limit:0.##} %.");
        if (UpperOf(gauged.Elongation) >= limit)
            return (Condition.PlanASwap, $"Within the uncertainty the limit of {limit:0.##} % may have been reached.");
        if (percent >= gauged.Limit.PlanFromPercent)
            return (Condition.PlanASwap,
                $"From {gauged.Limit.PlanFromPercent:0.##} % on a swap has to be planned; the limit is {limit:0.##} %.");
        return (Condition.WithinLimit, percent <= 0
            ? Phrase.Of($"No wear that could be seen; the limit is {limit:0.##} %.")
            : $"{100 * percent / limit:0} % of the way to the limit of {limit:0.##} %.");
    }

    private static (Condition, Phrase) Lifting(GaugeCalculation gauged)
    {
        var (upper, limit) = (UpperOf(gauged.Elongation), gauged.Limit);
        if (gauged.Doubt is { } doubt)
            return (Condition.NotKnown, $"{doubt} A competent person examines it before further use.");
        if (upper >= limit.Percent)
            return (Condition.SwapNow, $"It may be at {upper:0.00} %: the discard limit of {limit.Percent:0.##} % "
                + $"({SourceWords.Of(limit.Source)}) may be reached. Take it out of use now; the whole chain is replaced, with "
                + $"its pair or set.");
        if (upper >= limit.PlanFromPercent)
            return (Condition.PlanASwap, $"It may be at {upper:0.00} %: the mark of {limit.PlanFromPercent:0.##} % for "
                + $"planning is reached ({SourceWords.Of(limit.Source)}). A competent person sets the date, at most three "
                + $"months ahead; at "
                + $"{limit.Percent:0.##} % it is out of use at once.");
        return (Condition.WithinLimit, $"At most {upper:0.00} % of {limit.Percent:0.##} % ({SourceWords.Of(limit.Source)}): "
            + $"wear within "
            + $"limits by this one measurement; not a release for use.");
    }

    private static double UpperOf(Elongation elongation) => elongation.Percent + elongation.ExpandedUncertaintyPercent;
}
