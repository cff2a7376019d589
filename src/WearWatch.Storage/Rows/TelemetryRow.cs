using WearWatch.Signals;

namespace WearWatch.Storage.Rows;

/// <summary>
/// One message of a machine, as it was told. Rows are only ever added; thinning takes old ones away once they are summed up.
/// </summary>
public sealed class TelemetryRow
{
    public long Id { get; init; }

    /// <summary>Given by the sender and its own: the same message delivered twice is stored once.</summary>
    public required string MessageId { get; init; }

    public int ChainId { get; init; }

    public TelemetryKind Kind { get; init; }

    /// <summary>The sender's time.</summary>
    public DateTimeOffset At { get; init; }

    /// <summary>The figure, in the unit of its kind.</summary>
    public double Value { get; init; }

    /// <summary>The message as it came, where one figure does not tell it all; else null.</summary>
    public string? Payload { get; init; }

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>Whether it is still to be sent on to a store of time series. It is not thinned before.</summary>
    public bool AwaitsForwarding { get; set; }
}
