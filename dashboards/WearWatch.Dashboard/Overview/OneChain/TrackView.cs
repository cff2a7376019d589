using WearWatch.Plant.Settings;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>One measure beside the elongation, as the page shows it.</summary>
/// <param name="Name">What is measured.</param>
/// <param name="Value">Its newest or worst value, or that there is none.</param>
/// <param name="Limit">The limit with who says so.</param>
/// <param name="Outlook">When it will have reached it, or why that is not known.</param>
/// <param name="Condition">How it is told; null where it asks for other work than a new chain.</param>
/// <param name="Points">How far it had come at each visit.</param>
public sealed record TrackView(
    string Name, string Value, string Limit, string Outlook, ShownCondition? Condition, IReadOnlyList<WayPoint> Points)
{
    /// <summary>The outlook in words.</summary>
    public static string Words(MeasureOutlook outlook, PlantTime time) => outlook switch
    {
        MeasureOutlook.Known { EarlyDate: { } early } => T[$"19 of 20 such measures stay within it beyond {time.DateOf(early)}."],
        MeasureOutlook.Known => T["Its limit is not in sight."],
        MeasureOutlook.NotKnown unknown => T[$"Forecast: {unknown.Reason}"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
