using WearWatch.Running;

namespace WearWatch.Chains;

/// <summary>What can happen to a chain or to its hour counter.</summary>
public enum ChainEventKind
{
    /// <summary>A new chain was fitted.</summary>
    Replacement,

    /// <summary>The hour counter was set back or replaced.</summary>
    MeterReset,

    /// <summary>Lubricant was applied.</summary>
    Oiling,

    /// <summary>Pitches were taken out.</summary>
    Shortened,

    /// <summary>The slack was taken up.</summary>
    Tensioned,

    /// <summary>Somebody looked at it.</summary>
    Inspection,

    /// <summary>A wheel was replaced; the chain stayed.</summary>
    SprocketReplaced,
}

/// <summary>One thing that happened, kept for ever as it was told.</summary>
public sealed record ChainEvent
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>What happened.</summary>
    public required ChainEventKind Kind { get; init; }

    /// <summary>When, if it was told.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>The hour counter just before, if it was told.</summary>
    public RunningHours? CounterBefore { get; init; }

    /// <summary>The hour counter just after; differs from the one before only when the counter was changed.</summary>
    public RunningHours? CounterAfter { get; init; }

    /// <summary>The supplier's lot of the chain that was fitted, as it stands on its tag, or empty.</summary>
    public string Lot { get; init; } = "";

    /// <summary>Whether the chain that was taken off broke while it ran; of a replacement only.</summary>
    public bool Broke { get; init; }

    /// <summary>How many pitches were taken out; of a shortening only. Null when nobody told.</summary>
    public int? PitchesOut { get; init; }

    /// <summary>How many pitches the chain that was fitted has; of a replacement only. Null when nobody told.</summary>
    public int? NewPitches { get; init; }

    /// <summary>How many teeth the sprocket that was fitted has; of a new sprocket only. Null when nobody told.</summary>
    public int? NewTeeth { get; init; }

    /// <summary>
    /// Where the take-up stood after it, in millimetres from where a new chain is taut; null when nobody read it.
    /// </summary>
    public double? TakeUpMm { get; init; }

    /// <summary>What was applied; of an oiling only.</summary>
    public OilApplied Oil { get; init; } = OilApplied.Untold;

    /// <summary>Whether the chain got oil; a stroke of which nothing arrived is kept and oils nothing.</summary>
    public bool BroughtOil => Kind == ChainEventKind.Oiling && !Oil.IsDry;

    /// <summary>What else the person wanted to say: for people to read; nothing is concluded from it.</summary>
    public string Note { get; init; } = "";
}
