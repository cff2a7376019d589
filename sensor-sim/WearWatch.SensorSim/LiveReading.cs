namespace WearWatch.SensorSim;

/// <summary>One measurement in the mill: what was written down, and what was true.</summary>
/// <param name="Record">What was written down.</param>
/// <param name="Truth">What was true.</param>
public sealed record LiveReading(WrittenReading Record, ReadingTruth Truth);
