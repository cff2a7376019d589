using WearWatch.Chains;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>An event on its way in, as it was told; the numbers are not checked yet.</summary>
public sealed record NewEvent
{
    /// <summary>Given by whoever sends it: the same key sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>What happened.</summary>
    public required ChainEventKind Kind { get; init; }

    /// <summary>When; this or a counter is needed.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>The hour counter just before.</summary>
    public double? CounterBeforeH { get; init; }

    /// <summary>The hour counter just after.</summary>
    public double? CounterAfterH { get; init; }

    /// <summary>The supplier's lot of the chain that was fitted, or empty.</summary>
    public string Lot { get; init; } = "";

    /// <summary>Whether the chain that was taken off broke while it ran; of a replacement only.</summary>
    public bool Broke { get; init; }

    /// <summary>How many pitches were taken out; needed of a shortening, and of nothing else.</summary>
    public int? PitchesOut { get; init; }

    /// <summary>Where the take-up stood after it, in millimetres from where a new chain is taut, or null.</summary>
    public double? TakeUpMm { get; init; }

    /// <summary>What was applied; of an oiling only.</summary>
    public OilApplied Oil { get; init; } = OilApplied.Untold;

    /// <summary>What else the person wanted to say.</summary>
    public string Note { get; init; } = "";

    /// <summary>Who or what told it.</summary>
    public required string ToldBy { get; init; }

    /// <summary>The event as the domain knows it.</summary>
    public ChainEvent ToEvent() => new()
    {
        Chain = Chain,
        Kind = Kind,
        At = At,
        CounterBefore = RowFields.Hours(CounterBeforeH),
        CounterAfter = RowFields.Hours(CounterAfterH),
        Lot = Lot.Trim(),
        Broke = Broke,
        PitchesOut = PitchesOut,
        TakeUpMm = TakeUpMm,
        Oil = Oil,
        Note = Note.Trim(),
    };
}
