namespace WearWatch.Entries;

/// <summary>What may have gone wrong when a reading was taken or entered.</summary>
public enum SlipKind
{
    /// <summary>Pitches too many or too few were counted.</summary>
    PitchesMiscounted,

    /// <summary>Inches or metres were entered as millimetres, or millimetres as inches.</summary>
    WrongUnit,

    /// <summary>The decimal point slipped.</summary>
    DecimalPoint,

    /// <summary>Two neighbouring digits of the length changed places.</summary>
    DigitsSwapped,

    /// <summary>A digit of the length was left out.</summary>
    DigitMissing,

    /// <summary>The tape was not begun at its zero.</summary>
    TapeNotAtZero,

    /// <summary>Measured over the outside of the end rollers instead of from centre to centre.</summary>
    OutsideOfRollers,

    /// <summary>Measured between the inside of the end rollers instead of from centre to centre.</summary>
    InsideOfRollers,

    /// <summary>The reading is another chain's.</summary>
    OtherChain,

    /// <summary>Another strand or place of the chain was measured than the one that was told.</summary>
    OtherStrand,

    /// <summary>A new chain was fitted and nobody wrote it down.</summary>
    ReplacedWithoutRecord,

    /// <summary>The whole loop was measured, and pitches had been taken out without record.</summary>
    ShortenedWithoutRecord,

    /// <summary>The hour counter was set back or changed and nobody wrote it down.</summary>
    CounterReset,

    /// <summary>Two neighbouring digits of the hour counter changed places.</summary>
    CounterDigitsSwapped,

    /// <summary>A digit of the hour counter was left out.</summary>
    CounterDigitMissing,

    /// <summary>A digit was written into the hour counter that does not belong there, or twice.</summary>
    CounterDigitExtra,

    /// <summary>One digit of the hour counter is another.</summary>
    CounterDigitWrong,

    /// <summary>The hour counter was read ten times too high or too low, such as with its tenths.</summary>
    CounterTenfold,

    /// <summary>The hour counter is another chain's.</summary>
    CounterOfOtherChain,

    /// <summary>The date is off by a day, a month or a year, or day and month changed places.</summary>
    DateSlipped,

    /// <summary>The hour counter is wrong in some other way.</summary>
    CounterWrong,

    /// <summary>Misread in some other way.</summary>
    Misread,
}
