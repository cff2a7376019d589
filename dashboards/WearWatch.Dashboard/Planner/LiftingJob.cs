using WearWatch.Chains.Families;

namespace WearWatch.Dashboard.Planner;

/// <summary>What differs on the job card of a chain that holds a load.</summary>
/// <remarks>
/// Whole chains and whole sets, no cutting, splicing or single links: makers' instructions to leaf chains (ISO 4347) and hoist
/// chains (EN 818-7), and 29 CFR 1910.184 for slings. The order of work is common practice; the maker's instructions and local
/// law go before.
/// </remarks>
public static class LiftingJob
{
    /// <summary>What is taken along.</summary>
    public static IReadOnlyList<string> ToolsFor(ChainFamily family) =>
    [
        T["locks and tags, tester for zero energy"], T["quarantine tags for the old chains"], T[family.PropAtSwap],
        T["the certificate of each new chain"], T["new anchor or clevis pins and their cotters, as the maker names them"],
        T["tape of class I or II, or caliper, for the baseline"], T["creeping oil for the joints"],
    ];

    /// <summary>The steps.</summary>
    /// <param name="pitches">How long the new chain is.</param>
    /// <param name="set">The chains that hang on the same load, itself among them.</param>
    public static IReadOnlyList<string> StepsFor(int pitches, IReadOnlyList<string> set) =>
    [
        T["Lower the load or the carriage and block it, so that nothing hangs on the chain. Stop the drive, isolate it, "
            + "lock and tag it, try to start it."],
        T["Write down the hour counter. Tag the old chain: quarantine, out of use. It is not used again, nor any part of it."],
        set.Count > 1
            ? T[$"Take off the whole set with its pins: {string.Join(", ", set)}. One worn chain condemns all of them."]
            : T["Take it off with its pins. If it is one of a pair or a set, all of them go with it: one worn chain condemns "
                + "all."],
        T["Look at pins, anchors, hooks, sheaves or load sprocket and guide: what is worn or bent goes with the chain."],
        T["Hold each new chain against its certificate: size, grade, working load limit, trace mark. Without one it is not "
            + "fitted."],
        T[$"Fit whole chains of {pitches:#,0} pitches as they came: never cut, lengthen, splice, weld or close with a single "
            + $"link."],
        T["Draw it in untwisted. Pin it to its anchors as the maker says, with new pins and cotters; the chains of a set "
            + "carry alike."],
        T["Oil the joints while the chain is slack. Measure each new chain: it is the baseline."],
        T["A competent person examines chains, pins and anchors and enters it in the register before anything is lifted. "
            + "Until then it stays locked and tagged."],
        T["Keep the old chain in quarantine until it has been made unusable. Enter what stands below."],
    ];

    /// <summary>What the fitter writes down after.</summary>
    public static IReadOnlyList<string> ToWrite =>
    [
        T["Done on, by"], T["Hour counter"], T["Certificates and trace marks of the new chains"], T["Working load limit"],
        T["Length in mm, over how many pitches"], T["Pins, anchors, sheaves: kept or new"],
        T["Quarantine tag of the old chain"], T["Examined before use by, on"],
    ];
}
