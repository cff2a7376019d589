using WearWatch.Chains;
using WearWatch.Running;

namespace WearWatch.Storage.Rows;

/// <summary>One event as it was told. Rows are only ever added.</summary>
public sealed class EventRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it, or made from its content: the same event sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    /// <summary>A hash of what was told: a file that holds this event again, such as an export, is recognised by it.</summary>
    public string Fingerprint { get; init; } = "";

    public ChainEventKind Kind { get; init; }

    public DateTimeOffset? At { get; init; }

    public double? CounterBeforeH { get; init; }

    public double? CounterAfterH { get; init; }

    /// <summary>The supplier's lot of the chain that was fitted.</summary>
    public string Lot { get; init; } = "";

    /// <summary>Whether the chain that was taken off broke while it ran.</summary>
    public bool Broke { get; init; }

    /// <summary>Of a shortening: how many pitches were taken out.</summary>
    public int? PitchesOut { get; init; }

    /// <summary>Of a replacement: how many pitches the new chain has.</summary>
    public int? NewPitches { get; init; }

    /// <summary>Of a sprocket's replacement: how many teeth the new one has.</summary>
    public int? NewTeeth { get; init; }

    /// <summary>Where the take-up stood after it, from where a new chain is taut.</summary>
    public double? TakeUpMm { get; init; }

    /// <summary>Of an oiling: how it was done, with which oil and how much of it, as far as it was told.</summary>
    public OilMethod? OilMethod { get; init; }

    public string OilGrade { get; init; } = "";

    public double? OilAmountMl { get; init; }

    /// <summary>What else was said, for people to read.</summary>
    public string Note { get; init; } = "";

    /// <summary>The event that this one replaces, or null.</summary>
    public long? CorrectsId { get; init; }

    /// <summary>Set on a correction that withdraws an event.</summary>
    public bool Withdraws { get; init; }

    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The event as the domain knows it.</summary>
    public ChainEvent ToEvent(string chain) => new()
    {
        Chain = chain,
        Kind = Kind,
        At = At,
        CounterBefore = CounterBeforeH is { } before ? new RunningHours(before) : null,
        CounterAfter = CounterAfterH is { } after ? new RunningHours(after) : null,
        Lot = Lot,
        Broke = Broke,
        PitchesOut = PitchesOut,
        NewPitches = NewPitches,
        NewTeeth = NewTeeth,
        TakeUpMm = TakeUpMm,
        Oil = new OilApplied(OilMethod, OilGrade, OilAmountMl),
        Note = Note,
    };
}
