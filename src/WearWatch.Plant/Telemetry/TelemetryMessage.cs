using WearWatch.Signals;

namespace WearWatch.Plant.Telemetry;

/// <summary>A message that was understood.</summary>
/// <param name="Id">Its sender's name for it, unique in the plant.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="Kind">What it tells.</param>
/// <param name="At">The sender's time.</param>
/// <param name="Value">The figure, in the unit of its kind.</param>
/// <param name="Payload">The message as it came, where one figure does not tell it all; else null.</param>
public sealed record TelemetryMessage(
    string Id, string Chain, TelemetryKind Kind, DateTimeOffset At, double Value, string? Payload);
