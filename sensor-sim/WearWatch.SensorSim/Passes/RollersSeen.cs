namespace WearWatch.SensorSim.Passes;

/// <summary>Of which rollers a pair of sensors tells.</summary>
public enum RollersSeen
{
    /// <summary>Each roller once.</summary>
    Each,

    /// <summary>Each second roller, as of a chain whose attachments are seen.</summary>
    EverySecond,

    /// <summary>Each roller once, and each link's middle once: half pitches.</summary>
    HalfPitches,

    /// <summary>The first sensor tells of each roller, the second one of each second.</summary>
    EverySecondAtSecond,
}
