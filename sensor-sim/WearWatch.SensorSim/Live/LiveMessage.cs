namespace WearWatch.SensorSim.Live;

/// <summary>A message that a machine of the mill publishes.</summary>
/// <param name="At">When.</param>
/// <param name="Topic">Where.</param>
/// <param name="Payload">What it says, as JSON.</param>
public sealed record LiveMessage(DateTimeOffset At, string Topic, string Payload);
