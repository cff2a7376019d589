using WearWatch.Chains;

namespace WearWatch.Gauging;

/// <summary>Where on a chain to measure, and how, in the order in which it is done. For every screen and paper.</summary>
/// <remarks>Sources: docs/references.md [4], [10], [27]; what has none is common practice.</remarks>
public static class MeasuringGuide
{
    /// <summary>The steps for a kind of chain.</summary>
    public static IReadOnlyList<string> For(ChainFamily family) => [Where(family), .. How(family), "Two or three lengths at one place tell more than one."];

    private static string Where(ChainFamily family) => family switch
    {
        ChainFamily.Leaf => "Choose the section that bends over the sheave most often; it wears first.",
        ChainFamily.RoundLink => "Choose the section that runs over the wheel most often; look at the links' contact ends first.",
        _ => "Choose a straight, taut stretch between two sprockets, off the teeth, and away from the connecting link.",
    };

    private static IEnumerable<string> How(ChainFamily family)
    {
        switch (family)
        {
            case ChainFamily.RoundLink:
                yield return "Pull it straight. Measure over 11 links, from inner edge to inner edge.";
                yield return "Measure the diameter where two links touch, too.";
                break;
            case ChainFamily.Leaf:
                yield return "Pull it straight. Tape: from pin middle to pin middle, an even number of pitches.";
                break;
            case ChainFamily.OffsetLink or ChainFamily.InvertedTooth:
                yield return "Pull it straight. From pin middle to pin middle; all links are alike, so that any number will do.";
                break;
            default:
                yield return "Pull it straight, or measure in place, taut.";
                yield return "Tape: from pin middle to pin middle, an even number of pitches; begin at a graduation, not at the hook.";
                yield return "Caliper: between the inner sides of the two end rollers, then over their outer sides.";
                break;
        }
    }
}
