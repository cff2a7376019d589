namespace WearWatch.SensorSim.Measuring;

/// <summary>A slip of the person who read the hour counter.</summary>
public enum CounterSlip
{
    /// <summary>None: as the counter showed.</summary>
    None,

    /// <summary>Two neighbouring digits changed places.</summary>
    SwappedDigits,

    /// <summary>A digit was left out.</summary>
    MissingDigit,

    /// <summary>A digit was struck twice.</summary>
    RepeatedDigit,

    /// <summary>The tenths were read as hours.</summary>
    TenthsAsHours,
}
