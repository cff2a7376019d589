namespace WearWatch.SensorSim;

/// <summary>What can happen to a chain or its hour counter, in the words of <c>events.csv</c>.</summary>
public enum MillEventKind
{
    /// <summary>A new chain was fitted.</summary>
    Replacement,

    /// <summary>The hour counter was exchanged.</summary>
    MeterReset,

    /// <summary>Oil was applied by hand.</summary>
    Oiling,

    /// <summary>Pitches were taken out.</summary>
    Shortened,

    /// <summary>The slack was taken up.</summary>
    Tensioned,

    /// <summary>Somebody looked at it.</summary>
    Inspection,
}

/// <summary>One thing that happened at a position.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Kind">What happened.</param>
/// <param name="At">When, with the offset of the mill's time zone.</param>
/// <param name="CounterBefore">What the hour counter showed just before.</param>
/// <param name="CounterAfter">What it showed just after.</param>
/// <param name="IsRecorded">Whether anybody wrote it down; if not, it stands in the truth alone.</param>
/// <param name="Lot">The works' lot of a fitted chain; empty for anything else.</param>
/// <param name="Oil">What an oiling brought; null for anything else.</param>
public sealed record MillEvent(
    string Chain, MillEventKind Kind, DateTimeOffset At, double CounterBefore, double CounterAfter, bool IsRecorded = true,
    string Lot = "", OilBrought? Oil = null);
