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

    /// <summary>The second sensor creeps by a tenth of a millimetre a day.</summary>
    CreepingSensor,

    /// <summary>The sensors' wires are swapped.</summary>
    SwappedSensors,

    /// <summary>The chain runs backwards.</summary>
    RunsBackwards,

    /// <summary>Each second roller is seen only.</summary>
    EverySecondRoller,

    /// <summary>Each pitch is told twice.</summary>
    HalfPitches,

    /// <summary>The sprocket runs out: the speed swings by one percent once in a turn.</summary>
    RunOut,

    /// <summary>The speed swings by 1.5 % within some seconds.</summary>
    SwingingSpeed,

    /// <summary>The second channel's clock is fast by 100 millionths.</summary>
    FastClock,

    /// <summary>The second channel tells half a millisecond late, and the speed is turned up and down.</summary>
    LateChannel,

    /// <summary>The hour counter was changed and set to its hours with two digits swapped; it runs on from there.</summary>
    CounterDigitsSwapped,

    /// <summary>It was set with a digit left out.</summary>
    CounterDigitMissing,

    /// <summary>It was set with a digit struck twice.</summary>
    CounterDigitTwice,

    /// <summary>It was set to its tenths as hours.</summary>
    CounterTenthsAsHours,

    /// <summary>Each morning somebody sends the length of the chain from a caliper, over one pitch more than is told.</summary>
    LengthOnePitchMore,

    /// <summary>The same, over one pitch fewer.</summary>
    LengthOnePitchFewer,

    /// <summary>The same, with the decimal point one digit to the left.</summary>
    LengthPointSlipped,

    /// <summary>The same, with two digits swapped.</summary>
    LengthDigitsSwapped,
}
