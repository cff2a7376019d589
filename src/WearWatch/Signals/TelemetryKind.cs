namespace WearWatch.Signals;

/// <summary>What a machine tells of a position while it runs. The numbers are kept in the database: never change one.</summary>
public enum TelemetryKind
{
    /// <summary>What an hour counter shows, in hours.</summary>
    RunningCounter = 0,

    /// <summary>Whether the drive runs: 1 from that moment on, or 0.</summary>
    RunningSwitch = 1,

    /// <summary>Pulses of a speed sensor, counted on and on.</summary>
    RunningPulses = 2,

    /// <summary>A length over pitches, measured by sensors, in millimetres.</summary>
    Length = 3,

    /// <summary>Times at which rollers or links passed two sensors; the value is how many passed the first.</summary>
    Passes = 4,

    /// <summary>Temperature of the chain in degrees Celsius.</summary>
    Temperature = 5,

    /// <summary>
    /// Oil that a lubricator gave in one stroke, in cubic centimetres; 0 for a stroke of which nothing arrived.
    /// </summary>
    Oiling = 6,
}
