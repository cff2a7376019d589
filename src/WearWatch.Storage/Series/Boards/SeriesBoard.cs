using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace WearWatch.Storage.Series.Boards;

/// <summary>Ready-made boards over the time series, in the open JSON format (schema version 39) that Grafana imports.</summary>
/// <remarks>
/// They are made of <see cref="SeriesSchema"/> and <see cref="BoardPicture"/>, so that they cannot ask for what is not written.
/// </remarks>
public static class SeriesBoard
{
    private const int SchemaVersion = 39;

    /// <summary>The format's grid is 24 wide.</summary>
    private const int GridWidth = 24;
    private const int PanelHeight = 8;

    /// <summary>Takes in every chain, also one whose line is not written since it is empty.</summary>
    private const string Any = ".*";

    private static readonly string[] Labels = ["wearwatch"];

    private static readonly JsonSerializerOptions Format = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    private static readonly object Source = new { type = "influxdb", uid = "${source}" };

    /// <summary>The boards by the name of their file: one for all chains, and one for a single chain.</summary>
    public static IReadOnlyDictionary<string, string> Files { get; } = new Dictionary<string, string>
    {
        ["plant.json"] = Board("wearwatch-plant", "Chains of the plant", panelsInRow: 2, oneChain: false, "now-7d"),
        ["chain.json"] = Board("wearwatch-chain", "One chain", panelsInRow: 1, oneChain: true, "now-30d"),
    };

    private static string Board(string uid, string title, int panelsInRow, bool oneChain, string from) =>
        JsonSerializer.Serialize(
        new
        {
            uid,
            title,
            description = "Raw telemetry that WearWatch sends on. Made by: wearwatch boards",
            tags = Labels,
            schemaVersion = SchemaVersion,
            editable = true,
            timezone = "browser",
            refresh = "1m",
            time = new { from, to = "now" },
            templating = new { list = Variables(oneChain) },
            panels = BoardPicture.All.Select((panel, i) => Panel(panel, i, panelsInRow)),
        },
        Format) + "\n";

    private static object[] Variables(bool oneChain) =>
    [
        new { name = "source", label = "Data source", type = "datasource", query = "influxdb" },
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

    private static object Panel(BoardPicture panel, int i, int panelsInRow)
    {
        var width = GridWidth / panelsInRow;
        return new
        {
            id = i + 1,
            type = "timeseries",
            title = panel.Title,
            description = panel.Note,
            datasource = Source,
            gridPos = new { x = i % panelsInRow * width, y = i / panelsInRow * PanelHeight, w = width, h = PanelHeight },
            fieldConfig = new
            {
                defaults = new
                {
                    unit = panel.Unit,
                    min = panel.Style == PanelStyle.Bars ? 0 : (int?)null,
                    custom = Drawing(panel.Style),
                },
                overrides = Array.Empty<object>()
            },
            options = new
            {
                legend = new { displayMode = "list", placement = "bottom", showLegend = true },
                tooltip = new { mode = "multi", sort = "none" },
            },
            targets = new[] { new
            {
                refId = "A",
                datasource = Source,
                rawQuery = true,
                query = panel.Query,
                resultFormat = "time_series",
                alias = "$tag_chain",
            } },
        };
    }

    private static object Drawing(PanelStyle style) => new
    {
        drawStyle = style switch { PanelStyle.Bars => "bars", PanelStyle.Points => "points", _ => "line" },
        lineInterpolation = style == PanelStyle.Steps ? "stepAfter" : "linear",
        fillOpacity = style == PanelStyle.Bars ? 60 : 0,
        pointSize = 5,
        showPoints = style == PanelStyle.Points ? "always" : "auto",
    };
}
