namespace WearWatch.Storage.Rows;

/// <summary>
/// A message of a machine that the store of time series refused. It is kept here as every other; only the charts there lack it.
/// </summary>
public sealed class ParkedRow
{
    /// <summary>The message.</summary>
    public long TelemetryId { get; init; }

    /// <summary>What the store said.</summary>
    public required string Reason { get; init; }

    public DateTimeOffset At { get; init; }
}
