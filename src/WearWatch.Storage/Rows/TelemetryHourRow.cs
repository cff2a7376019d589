using WearWatch.Signals;

namespace WearWatch.Storage.Rows;

/// <summary>
/// An hour of one kind of telemetry, summed up in the transaction that stores it: each message counts exactly once.
/// </summary>
public sealed class TelemetryHourRow
{
    public int ChainId { get; init; }

    public TelemetryKind Kind { get; init; }

    /// <summary>The hour's beginning, UTC.</summary>
    public DateTimeOffset Hour { get; init; }

    public long Count { get; set; }

    public double Sum { get; set; }

    public double Min { get; set; }

    public double Max { get; set; }

    /// <summary>
    /// How many of them the conclusions rest on; less than <see cref="Count"/> means that there is something to conclude.
    /// </summary>
    public long Concluded { get; set; }
}
