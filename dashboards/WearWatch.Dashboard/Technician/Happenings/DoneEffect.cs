using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Dashboard.Technician.Entry;
using WearWatch.Lubrication;

namespace WearWatch.Dashboard.Technician.Happenings;

/// <summary>What a record changed, in words: what the person at the chain wants to know before walking on.</summary>
public static class DoneEffect
{
    /// <summary>The effect of something that was done.</summary>
    /// <param name="kind">What was done.</param>
    /// <param name="before">The chain before it was told.</param>
    /// <param name="after">The chain with it.</param>
    public static IReadOnlyList<string> Words(ChainEventKind kind, DoneChain before, DoneChain after) => kind switch
    {
        ChainEventKind.Oiling => [Next(after)],
        ChainEventKind.Inspection when after.Oiling.Task == OilingTask.CheckOiler => [Next(after)],
        ChainEventKind.Inspection => [T["It stands in the record; no date changes by it."]],
        ChainEventKind.Tensioned => [T["It stands in the record; the wear and its dates stay as they are."]],
        ChainEventKind.Shortened =>
            [Shorter(after), T["Wear is counted by the pitch, so that it and its dates stay as they are."]],
        ChainEventKind.SprocketReplaced =>
            [T["Findings at the old teeth are closed. Change the master data if the number of teeth changed."]],
        ChainEventKind.Replacement => [.. Fitted(before, after)],
        ChainEventKind.MeterReset => [
            T[$"The chain's own hours run on: {Show.Hours(after.Assessment.HoursNow)}. From here on "
                + $"enter what the new counter shows."],
        ],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>When the oil is next.</summary>
    public static string Next(DoneChain chain)
    {
        var due = chain.Oiling;
        if (due.Task == OilingTask.None) return T[$"No next lubrication is foreseen: {due.Basis}."];
        Phrase task = due.Task == OilingTask.OilByHand
            ? Phrase.Of($"Next lubrication")
            : $"Next inspection of the lubricator";
        if (due.NextAt is not { } next || due.HoursLeft is not { } left) return T[$"{task}: not known, {due.Basis}."];
        return left <= 0
            ? T[$"{task}: due now."]
            : T[$"{task}: {chain.Time.Moment(next)}, in {Show.Hours(left)} of running."];
    }

    private static string Shorter(DoneChain after) => after is { PitchesNow: { } now, Card.Pitches: { } full }
        ? T[$"{now:#,0} of {full:#,0} pitches are left."]
        : T["How many pitches are left is not known: the master data do not say how long the chain is."];

    private static IEnumerable<string> Fitted(DoneChain before, DoneChain after)
    {
        yield return T[$"The new chain starts at 0 h; the one before it ran {Show.Hours(before.Assessment.HoursNow)}."];
        yield return T["Measure it now: its first reading gives its length when new."];
        yield return ForecastMove.Words(before.EarlyDate, after.EarlyDate, after.Time);
        if (after.Oiling.Task != OilingTask.None) yield return Next(after);
    }
}
