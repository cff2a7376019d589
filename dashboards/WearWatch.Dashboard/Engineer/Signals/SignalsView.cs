using WearWatch.Signals.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.Signals;

/// <summary>What the page of a chain's signals shows.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="Running">Running hours by day, the newest first.</param>
/// <param name="Drift">Their drift against the hour meter; null where it cannot be told.</param>
/// <param name="Passes">Days of passes, the newest first.</param>
/// <param name="Sensors">The sensors as they were measured in last; null when nobody did.</param>
/// <param name="BlockedStrokes">Strokes of the lubricator in the last day of which nothing arrived, and all of them.</param>
public sealed record SignalsView(
    ChainRow Chain, IReadOnlyList<RunDayRow> Running, MeterDrift? Drift, IReadOnlyList<PassDayRow> Passes, SensorPairRow? Sensors,
    (int Empty, int All) BlockedStrokes)
{
    /// <summary>The edge nodes of Sparkplug that told of the chain, by their mappings.</summary>
    public required IReadOnlyList<SparkplugNodeRow> Nodes { get; init; }
}
