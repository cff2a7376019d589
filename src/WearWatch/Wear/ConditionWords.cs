using System.Diagnostics;

namespace WearWatch.Wear;

/// <summary>
/// How a condition is told, on every screen, in every answer, file and print: by the condition and by whether the chain lifts
/// or holds a load. There is no other place for these words.
/// </summary>
public static class ConditionWords
{
    /// <summary>The conditions, the one that needs a person first.</summary>
    public static IReadOnlyList<Condition> MostUrgentFirst { get; } =
        [Condition.SwapNow, Condition.PlanASwap, Condition.WithinLimit, Condition.NotKnown];

    /// <summary>All that can be told, most urgent first: of other chains, then of those that lift.</summary>
    public static IReadOnlyList<ShownCondition> All { get; } =
        [.. MostUrgentFirst.Select(c => Make(c, holdsLoad: false)), .. MostUrgentFirst.Select(c => Make(c, holdsLoad: true))];

    /// <summary>How a condition is told of a chain.</summary>
    /// <param name="condition">The condition.</param>
    /// <param name="holdsLoad">Whether the chain lifts or holds a load.</param>
    public static ShownCondition Of(Condition condition, bool holdsLoad) =>
        All.First(words => words.Condition == condition && words.HoldsLoad == holdsLoad);

    /// <summary>
    /// What a word of <see cref="ShownCondition.Wire"/> or <see cref="ShownCondition.Style"/> stands for; null for none.
    /// </summary>
    public static ShownCondition? Find(string? word) =>
        word is null ? null
            : All.FirstOrDefault(w => w.Wire.Equals(word.Replace('-', '_'), StringComparison.OrdinalIgnoreCase));

    private static ShownCondition Make(Condition condition, bool holdsLoad) => (condition, holdsLoad) switch
    {
        (Condition.WithinLimit, false) => new(condition, holdsLoad, $"within limit", "within_limit", SignalColour.Green,
            $"Normal: nothing to do but the next reading."),
        (Condition.PlanASwap, false) => new(condition, holdsLoad, $"plan a swap", "plan_a_swap", SignalColour.Yellow,
            $"Attention: the limit comes near; book a swap."),
        (Condition.SwapNow, false) => new(condition, holdsLoad, $"swap now", "swap_now", SignalColour.Red,
            $"Act now: the limit has been passed, or may be any day."),
        (Condition.NotKnown, false) => new(condition, holdsLoad, $"not known", "not_known", SignalColour.Grey,
            $"The readings say too little of the chain that runs now: measure it."),
        (Condition.WithinLimit, true) => new(condition, holdsLoad, $"wear within limits; not a release for use",
            "wear_within_limits", SignalColour.Plain,
            $"A figure never releases a chain that lifts: look at all its points, and keep to its examination dates."),
        (Condition.PlanASwap, true) => new(condition, holdsLoad,
            $"limit for planning reached: a competent person sets the date", "planning_limit_reached", SignalColour.Yellow,
            $"Inform the competent person now. From the date set, or from the hard date, it is out of use."),
        (Condition.SwapNow, true) => new(condition, holdsLoad, $"take out of use", "take_out_of_use", SignalColour.Red,
            $"Lower the load, block it and lift no more. Only a competent person releases it."),
        (Condition.NotKnown, true) => new(condition, holdsLoad, $"cannot be judged", "cannot_be_judged", SignalColour.Grey,
            $"The readings say too little of it: a competent person examines it before further use."),
        _ => throw new UnreachableException($"Condition {condition} has no words."),
    };
}
