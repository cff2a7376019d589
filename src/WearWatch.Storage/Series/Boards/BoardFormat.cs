using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace WearWatch.Storage.Series.Boards;

/// <summary>The open JSON format of boards (schema version 39) that Grafana imports.</summary>
public static class BoardFormat
{
    private const int SchemaVersion = 39;

    /// <summary>The format's grid is 24 wide.</summary>
    private const int GridWidth = 24;
    private const int PanelHeight = 8;

    private static readonly string[] Labels = ["wearwatch"];

    private static readonly JsonSerializerOptions Format = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>Anything as the text of a file.</summary>
    public static string File(object content) => JsonSerializer.Serialize(content, Format) + "\n";

    /// <summary>A board.</summary>
    /// <param name="name">Its name, and by it where it is found there.</param>
    /// <param name="description">What it is of.</param>
    /// <param name="from">Since when it shows at first.</param>
    /// <param name="variables">What a person chooses on it.</param>
    /// <param name="panels">Its pictures.</param>
    public static string Board(
        (string Uid, string Title) name, string description, string from, object[] variables, IEnumerable<object> panels) => File(
        new
        {
            uid = name.Uid,
            title = name.Title,
            description,
            tags = Labels,
            schemaVersion = SchemaVersion,
            editable = true,
            timezone = "browser",
            refresh = "1m",
            time = new { from, to = "now" },
            templating = new { list = variables },
            panels,
        });

    /// <summary>The choice of a source of data.</summary>
    public static object Source(string type) => new { name = "source", label = "Data source", type = "datasource", query = type };

    /// <summary>The source that is chosen.</summary>
    public static object Chosen(string type) => new { type, uid = "${source}" };

    /// <summary>A picture in its place on the grid.</summary>
    /// <param name="text">Its title, and what to see in it.</param>
    /// <param name="look">The unit in the format's words, and how it is drawn.</param>
    /// <param name="source">The chosen source.</param>
    /// <param name="target">What is asked of it.</param>
    /// <param name="at">Which picture of the board it is, and how many stand in a row.</param>
    public static object Panel(
        (string Title, string Note) text, (string Unit, PanelStyle Style) look, object source, object target,
        (int Number, int InRow) at)
    {
        var width = GridWidth / at.InRow;
        return new
        {
            id = at.Number + 1,
            type = "timeseries",
            title = text.Title,
            description = text.Note,
            datasource = source,
            gridPos = new
            {
                x = at.Number % at.InRow * width,
                y = at.Number / at.InRow * PanelHeight,
                w = width,
                h = PanelHeight,
            },
            fieldConfig = new
            {
                defaults = new
                {
                    unit = look.Unit,
                    min = look.Style == PanelStyle.Bars ? 0 : (int?)null,
                    custom = Drawing(look.Style),
                },
                overrides = Array.Empty<object>()
            },
            options = new
            {
                legend = new { displayMode = "list", placement = "bottom", showLegend = true },
                tooltip = new { mode = "multi", sort = "none" },
            },
            targets = new[] { target },
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
