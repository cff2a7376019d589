using WearWatch.SensorSim.Measuring;

namespace WearWatch.SensorSim;

/// <summary>What somebody wrote down of one measurement: a row of <c>readings.csv</c>.</summary>
public sealed record WrittenReading
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>When, with the offset of the mill's time zone.</summary>
    public required DateTimeOffset TakenAt { get; init; }

    /// <summary>What the hour counter showed.</summary>
    public required double CounterHours { get; init; }

    /// <summary>With what.</summary>
    public required Tool Tool { get; init; }

    /// <summary>The marked section of the chain, or empty.</summary>
    public required string Place { get; init; }

    /// <summary>The number of pitches that was written down.</summary>
    public required int Pitches { get; init; }

    /// <summary>The length as it was written down, such as <c>612.5</c> or <c>48 3/16</c>.</summary>
    public required string Length { get; init; }

    /// <summary><c>mm</c> or <c>in</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>Temperature of the chain in degrees Celsius, or null when it was not written down.</summary>
    public required int? TemperatureC { get; init; }
}
