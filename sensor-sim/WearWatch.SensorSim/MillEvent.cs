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
public sealed record MillEvent(string Chain, MillEventKind Kind, DateTimeOffset At, double CounterBefore, double CounterAfter)
{
    /// <summary>Whether anybody wrote it down; if not, it stands in the truth alone.</summary>
    public bool IsRecorded { get; init; } = true;

    /// <summary>The works' lot of a fitted chain; empty for anything else.</summary>
    public string Lot { get; init; } = "";

    /// <summary>What an oiling brought; null for anything else.</summary>
    public OilBrought? Oil { get; init; }

    /// <summary>Whether the chain that was taken off broke while it ran.</summary>
    public bool Broke { get; init; }

    /// <summary>How many pitches a shortening took out; null for anything else.</summary>
    public int? PitchesOut { get; init; }

    /// <summary>Where the take-up stood after it, in mm from where a new chain is taut; null where nobody read it.</summary>
    public double? TakeUpMm { get; init; }
}
