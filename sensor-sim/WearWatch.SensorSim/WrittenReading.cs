using WearWatch.SensorSim.Measuring;

namespace WearWatch.SensorSim;

/// <summary>What somebody wrote down of one measurement: a row of <c>readings.csv</c>.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="TakenAt">When, with the offset of the mill's time zone.</param>
/// <param name="CounterHours">What the hour counter showed.</param>
/// <param name="Tool">With what.</param>
/// <param name="Place">The marked section of the chain, or empty.</param>
/// <param name="Pitches">The number of pitches that was written down.</param>
/// <param name="Length">The length as it was written down, such as <c>612.5</c> or <c>48 3/16</c>.</param>
/// <param name="Unit"><c>mm</c> or <c>in</c>.</param>
/// <param name="TemperatureC">Temperature of the chain in degrees Celsius, or null when it was not written down.</param>
public sealed record WrittenReading(
    string Chain, DateTimeOffset TakenAt, double CounterHours, Tool Tool, string Place, int Pitches, string Length, string Unit,
    int? TemperatureC);
