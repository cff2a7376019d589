using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Parts;

/// <summary>The notice of parts that are worn to their limits, or will be soon.</summary>
internal static class PartNotice
{
    /// <summary>The notice of all parts that ask for attention; null where none does.</summary>
    public static Notice? Of(PartsState state)
    {
        var worn = state.ToAttend;
        if (worn.Count == 0) return null;
        return new(
            NoticeKind.PartWorn, Urgent: worn.Any(t => IsUrgent(t, state)), Phrase.Join(" ", worn.Select(PartWords.Of)),
            Phrase.Join(" ", worn.Select(t => WhatToDo(t.Part, state.ConditionOf(t), state.HoldsLoad)).Distinct()));
    }

    /// <summary>What is done about a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="condition">How bad it is.</param>
    /// <param name="holdsLoad">Whether the chain lifts or holds a load.</param>
    public static Phrase WhatToDo(WearPart part, Condition condition, bool holdsLoad) => part switch
    {
        WearPart.ToothRoot or WearPart.ToothHook => $"Replace the sprockets together with the chain.",
        WearPart.Sag when holdsLoad => $"Set the take-up. This chain is never shortened.",
        WearPart.Sag => $"Tension it anew. Where the take-up is at its end: take out pitches, or replace the chain.",
        WearPart.Alignment => $"Lock the drive out and align the shafts and the sprockets.",
        _ when holdsLoad && condition is Condition.SwapNow =>
            $"Take it out of use now: lower the load, tag it. A competent person judges it before it is used again.",
        _ when holdsLoad => $"A competent person sets the date from which it is out of use. Order the whole chain.",
        _ when condition is Condition.SwapNow => $"Swap the whole chain. Lock the drive out first.",
        _ => $"Plan the swap of the whole chain.",
    };

    // A wheel, a slack or a line that is off waits for the next stop; a chain at its limit does not.
    private static bool IsUrgent(PartTrack track, PartsState state) =>
        track.Part.IsOfChain && state.ConditionOf(track) is Condition.SwapNow;
}
