namespace WearWatch.Entries;

/// <summary>What may have gone wrong when a reading was taken or entered.</summary>
public enum SlipKind
{
    /// <summary>One or two pitches too many or too few were counted.</summary>
    PitchesMiscounted,

    /// <summary>Inches were entered as millimetres, or millimetres as inches.</summary>
    WrongUnit,

    /// <summary>The decimal point slipped.</summary>
    DecimalPoint,

    /// <summary>Measured over the outside of the end rollers instead of from centre to centre.</summary>
    OutsideOfRollers,

    /// <summary>Measured between the inside of the end rollers instead of from centre to centre.</summary>
    InsideOfRollers,

    /// <summary>The reading is another chain's.</summary>
    OtherChain,

    /// <summary>A new chain was fitted and nobody wrote it down.</summary>
    ReplacedWithoutRecord,

    /// <summary>The whole loop was measured, and pitches had been taken out without record.</summary>
    ShortenedWithoutRecord,

    /// <summary>The hour counter was set back and nobody wrote it down.</summary>
    CounterReset,

    /// <summary>Misread in some other way.</summary>
    Misread,
}
