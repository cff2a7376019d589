namespace WearWatch.Plant.Telemetry;

/// <summary>A message as it arrived.</summary>
/// <param name="Topic">Where it was published.</param>
/// <param name="Payload">What it says.</param>
/// <param name="At">When it arrived: the time of what tells none of its own; null for this moment.</param>
public sealed record Arrival(string Topic, ReadOnlyMemory<byte> Payload, DateTimeOffset? At = null);
