namespace WearWatch.Signals.Passes;

/// <summary>How two sensors see a chain, by its pattern of joints.</summary>
internal enum PatternKind
{
    /// <summary>Each roller, at the first sensor first.</summary>
    EachRoller,

    /// <summary>Each roller, at the second sensor first.</summary>
    Backwards,

    /// <summary>Each second roller only.</summary>
    EverySecondRoller,

    /// <summary>Each pitch twice.</summary>
    HalfPitches,
}
