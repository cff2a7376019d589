using WearWatch.Chains.Families;
using WearWatch.Planning.Supply;

namespace WearWatch.Dashboard.Planner;

/// <summary>What a fitter takes along to swap a chain: one page.</summary>
public sealed record JobCard
{
    public required string Chain { get; init; }

    /// <summary>Facts in order: name and value.</summary>
    public required IReadOnlyList<(string Name, string Value)> Facts { get; init; }

    /// <summary>The cautions of its kind, most urgent first.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    public required IReadOnlyList<string> Tools { get; init; }

    public required IReadOnlyList<string> Steps { get; init; }

    /// <summary>What the fitter writes down after.</summary>
    public required IReadOnlyList<string> ToWrite { get; init; }

    /// <summary>What is written down of a chain that holds no load.</summary>
    public static IReadOnlyList<string> UsuallyToWrite =>
    [
        T["Done on, by"], T["Hours it took"], T["Hour counter"], T["Lot of the new chain"], T["Pitches of the new chain"],
        T["Length of the old chain in mm, over how many pitches"], T["Length of the new chain in mm, over how many pitches"],
        T["Take-up position in mm"], T["Sprockets: kept or new"], T["Remarks"],
    ];

    /// <summary>What it is made up of, in words.</summary>
    public static string CutInWords(ChainCut cut) => string.Join(" + ", new[]
    {
        T[$"cut {cut.CutPitches:#,0} pitches"],
        cut.ConnectingLinks > 0 ? T[$"{cut.ConnectingLinks} connecting link"] : "",
        cut.OffsetLinks > 0 ? T[$"{cut.OffsetLinks} offset link"] : "",
    }.Where(t => t.Length > 0));

    /// <summary>What it takes from the store, in words: <c>118 pitches of 16B-1 chain, 1 16B-1 connecting link</c>.</summary>
    public static string PartsInWords(IEnumerable<PartNeed> needs) =>
        string.Join(", ", needs.Select(need => T[need.Part.Quantity(need.Quantity)]));

    /// <summary>Tools by the chain's kind. Source: common practice.</summary>
    public static IReadOnlyList<string> ToolsFor(ChainFamily family) =>
    [
        T["locks and tags, tester for zero energy"], T["chain breaker or pin press for this pitch"], T["chain puller"],
        T["straightedge for the alignment of the sprockets"], T[family.PropAtSwap],
        T["tape of class I or II, or caliper, for the baseline"], T["oil of the grade that the chain runs with"],
    ];

    /// <summary>Steps by the chain's kind. Source: common practice; the maker's instructions go before.</summary>
    public static IReadOnlyList<string> StepsFor(ChainFamily family, ChainCut cut, int pitches) =>
    [
        T["Stop the drive, isolate it, lock and tag it, try to start it. Let go what is under tension; prop what could fall."],
        T["Write down the hour counter. Take the guard off."],
        T["Slacken the take-up. Open the old chain on a sprocket and draw it out; keep it to inspect its joints."],
        T["Look at the sprockets: hooked or worn teeth go with the chain. Check their alignment with the straightedge."],
        T[$"Make up the new chain: {CutInWords(cut)}, {pitches:#,0} pitches in all. Count twice."],
        T[family.ClosingStep],
        T["Set the slack. Lubricate it. Turn it by hand once round."],
        T["Measure the new chain over as many pitches as can be reached, tensioned and standing: it is the baseline."],
        T["Refit the guards, take off your own lock, run it and listen. Enter what stands below."],
    ];
}
