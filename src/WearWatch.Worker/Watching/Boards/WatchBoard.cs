using WearWatch.Storage.Series.Boards;

namespace WearWatch.Worker.Watching.Boards;

/// <summary>
/// A ready-made board and rules over the program's own figures, for a collector that hands them to Prometheus: names as the
/// compatibility specification of OpenTelemetry has them there.
/// </summary>
internal static class WatchBoard
{
    private const string Type = "prometheus";
    private const int PanelsInRow = 2;

    private static readonly object Source = BoardFormat.Chosen(Type);

    /// <summary>The board and the rules by the name of their file. JSON is YAML too, which is what rules are read as.</summary>
    public static IReadOnlyDictionary<string, string> Files { get; } = new Dictionary<string, string>
    {
        ["watch.json"] = BoardFormat.Board(
            ("wearwatch-watch", "WearWatch itself"), "How the program does. Made by: wearwatch boards", "now-24h",
            [BoardFormat.Source(Type)], WatchPicture.All.Select((picture, i) => BoardFormat.Panel(
                (picture.Title, picture.Note), (picture.Unit, picture.Style), Source, Target(picture), (i, PanelsInRow)))),
        ["alerts.json"] = BoardFormat.File(new { groups = new[] { Group } }),
    };

    private static object Group => new { name = "wearwatch", rules = WatchAlert.All.Select(Rule) };

    private static object Target(WatchPicture picture) => new
    {
        refId = "A",
        datasource = Source,
        expr = picture.Question,
        legendFormat = picture.Legend,
    };

    private static Dictionary<string, object> Rule(WatchAlert alert) => new()
    {
        ["alert"] = alert.Name,
        ["expr"] = alert.Condition,
        ["for"] = alert.For,
        ["labels"] = new { severity = alert.IsCritical ? "critical" : "warning" },
        ["annotations"] = new { summary = alert.What, description = alert.WhatToDo },
    };
}
