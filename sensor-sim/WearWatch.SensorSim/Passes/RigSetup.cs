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

    /// <summary>The shortest and the longest time of one such wandering, in seconds.</summary>
    public (double Least, double Most) SwingSeconds { get; init; } = (3, 9);

    /// <summary>By which share the speed swings once in a turn of the sprocket: its run-out over its radius.</summary>
    public double RunOut { get; init; }

    /// <summary>By which share the speed swings twice in a turn: an oval sprocket, a joint in the shaft.</summary>
    public double RunOutTwice { get; init; }

    /// <summary>Between which shares of the mean speed the speed of a stretch lies: a drive that is turned up and down.</summary>
    public (double Least, double Most) SpeedShare { get; init; } = (1, 1);

    /// <summary>By how many millionths the second channel's clock is fast.</summary>
    public double ClockPpm { get; init; }

    /// <summary>By how many microseconds the second channel tells later than the first.</summary>
    public double DelayMicroseconds { get; init; }
}
