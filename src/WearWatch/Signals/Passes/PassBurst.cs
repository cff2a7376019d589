namespace WearWatch.Signals.Passes;

/// <summary>What two sensors saw in a short while: when rollers or links passed each of them.</summary>
/// <param name="At">When it began.</param>
/// <param name="FirstUs">Passes at the sensor that the chain meets first, in microseconds after the beginning, rising.</param>
/// <param name="SecondUs">Passes at the other sensor, by the same clock.</param>
/// <param name="TemperatureC">Temperature of the chain in degrees Celsius; null when it was not told (taken as 20).</param>
public sealed record PassBurst(
    DateTimeOffset At, IReadOnlyList<long> FirstUs, IReadOnlyList<long> SecondUs, double? TemperatureC);
