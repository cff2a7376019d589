using WearWatch.Signals;

namespace WearWatch.Storage.Rows;

/// <summary>A day of one kind of telemetry, summed up from hours that are too old to be kept. It is kept for ever.</summary>
public sealed class TelemetryDayRow
{
    public int ChainId { get; init; }

    public TelemetryKind Kind { get; init; }

    /// <summary>The day's beginning, UTC.</summary>
    public DateTimeOffset Day { get; init; }

    public long Count { get; set; }

    public double Sum { get; set; }

    public double Min { get; set; }

    public double Max { get; set; }
}
