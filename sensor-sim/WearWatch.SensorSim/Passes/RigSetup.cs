namespace WearWatch.SensorSim.Passes;

/// <summary>Measures of a chain, its sprocket and two sensors.</summary>
/// <param name="PitchMm">Nominal pitch in millimetres.</param>
/// <param name="Pitches">Length of the whole chain in pitches; even.</param>
/// <param name="Teeth">Teeth of the sprocket that pulls.</param>
/// <param name="DistanceMm">True distance of the sensors at 20 degrees, in millimetres.</param>
/// <param name="SpeedMetresPerSecond">Mean speed of the chain.</param>
public sealed record RigSetup(double PitchMm, int Pitches, int Teeth, double DistanceMm, double SpeedMetresPerSecond)
{
    /// <summary>Standard deviation of the time of a pulse, in microseconds.</summary>
    public double JitterMicroseconds { get; init; } = 50;

    /// <summary>Share of the pulses that are missed.</summary>
    public double MissedShare { get; init; } = 0.01;

    /// <summary>By which share the shaft's speed wanders about its mean.</summary>
    public double ShaftSwing { get; init; } = 0.03;
}
