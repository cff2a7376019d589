namespace WearWatch.SensorSim.Measuring;

/// <summary>With what a length is measured. The names in lower case are those of the file format.</summary>
public enum Tool
{
    /// <summary>A steel tape.</summary>
    Tape,

    /// <summary>A caliper.</summary>
    Caliper,

    /// <summary>Sensors on the running chain.</summary>
    Sensor,
}
