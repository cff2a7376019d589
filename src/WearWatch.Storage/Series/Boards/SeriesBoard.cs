namespace WearWatch.Storage.Series.Boards;

/// <summary>Ready-made boards over the time series.</summary>
/// <remarks>
/// They are made of <see cref="SeriesSchema"/> and <see cref="BoardPicture"/>, so that they cannot ask for what is not written.
/// </remarks>
public static class SeriesBoard
{
    private const string Type = "influxdb";

    /// <summary>Takes in every chain, also one whose line is not written since it is empty.</summary>
    private const string Any = ".*";

    private static readonly object Source = BoardFormat.Chosen(Type);

    /// <summary>The boards by the name of their file: one for all chains, and one for a single chain.</summary>
    public static IReadOnlyDictionary<string, string> Files { get; } = new Dictionary<string, string>
    {
        ["plant.json"] = Board("wearwatch-plant", "Chains of the plant", panelsInRow: 2, oneChain: false, "now-7d"),
        ["chain.json"] = Board("wearwatch-chain", "One chain", panelsInRow: 1, oneChain: true, "now-30d"),
    };

    private static string Board(string uid, string title, int panelsInRow, bool oneChain, string from) => BoardFormat.Board(
        (uid, title), "Raw telemetry that WearWatch sends on. Made by: wearwatch boards", from, Variables(oneChain),
        BoardPicture.All.Select((panel, i) => BoardFormat.Panel(
            (panel.Title, panel.Note), (panel.Unit, panel.Style), Source, Target(panel), (i, panelsInRow))));

    private static object[] Variables(bool oneChain) =>
    [
        BoardFormat.Source(Type),
        Values("line", "Line", "SHOW TAG VALUES WITH KEY = \"line\"", all: true),
        Values("chain", "Chain", "SHOW TAG VALUES WITH KEY = \"chain\" WHERE \"line\" =~ /^$line$/", all: !oneChain),
    ];

    private static object Values(string name, string label, string query, bool all) => new
    {
        name,
        label,
        type = "query",
        datasource = Source,
        query,
        refresh = 2, // with each change of the time shown
        sort = 1, // by name
        multi = all,
        includeAll = all,
        allValue = all ? Any : null,
        current = all ? new { text = "All", value = "$__all" } : null,
    };

    private static object Target(BoardPicture panel) => new
    {
        refId = "A",
        datasource = Source,
        rawQuery = true,
        query = panel.Query,
        resultFormat = "time_series",
        alias = "$tag_chain",
    };
}
