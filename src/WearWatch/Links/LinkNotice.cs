using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>The notice of links that are worn or stretched to their limit.</summary>
internal static class LinkNotice
{
    /// <summary>The notice of a state that asks for attention.</summary>
    /// <param name="state">What the links say.</param>
    /// <param name="holdsLoad">Whether the chain lifts or holds a load.</param>
    public static Notice Of(LinksState state, bool holdsLoad) => new(
        NoticeKind.LimitNear, Urgent: state.Condition is Condition.SwapNow, state.Sentence, (state.Condition, holdsLoad) switch
        {
            (Condition.SwapNow, true) =>
                $"Take it out of use now: lower the load, tag it. A competent person judges it before it is used again; "
                + $"a chain that is discarded goes whole, with its set.",
            (_, true) => $"A competent person sets the date from which it is out of use. Order the whole chain.",
            (Condition.SwapNow, false) => $"Swap the whole chain. Lock the drive out first.",
            _ => $"Plan the swap of the whole chain.",
        });
}
