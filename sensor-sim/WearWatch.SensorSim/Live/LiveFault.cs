namespace WearWatch.SensorSim.Live;

/// <summary>What can be made to go wrong on command.</summary>
public enum LiveFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A fifth of the pulses is missed.</summary>
    MissedPulses,

    /// <summary>The second sensor is moved by four millimetres.</summary>
    MovedSensor,

    /// <summary>The hour counter stands still though the line runs.</summary>
    StoppedCounter,

    /// <summary>The lubricator strokes and nothing arrives.</summary>
    BlockedLubricator,
}
