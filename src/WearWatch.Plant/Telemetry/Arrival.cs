namespace WearWatch.Plant.Telemetry;

/// <summary>A message as it arrived.</summary>
/// <param name="Topic">Where it was published.</param>
/// <param name="Payload">What it says.</param>
public sealed record Arrival(string Topic, ReadOnlyMemory<byte> Payload);
