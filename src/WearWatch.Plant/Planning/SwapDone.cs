using WearWatch.Planning.Supply;

namespace WearWatch.Plant.Planning;

/// <summary>What a person, or the work order's system, says of a swap that was done.</summary>
/// <param name="At">When.</param>
/// <param name="CounterH">The hour counter, if it was read.</param>
/// <param name="Lot">The supplier's lot of the new chain, or empty.</param>
/// <param name="Broke">Whether the old chain broke while it ran.</param>
/// <param name="TakeUpMm">Where the take-up stands with the new chain, if it was read.</param>
/// <param name="Note">What else there is to say.</param>
public sealed record SwapDone(DateTimeOffset At, double? CounterH, string Lot, bool Broke, double? TakeUpMm, string Note)
{
    /// <summary>How many pitches the new chain has, if they were counted.</summary>
    public int? NewPitches { get; init; }

    /// <summary>The old chain's length before it came off, if it was measured.</summary>
    public MeasuredLength? OldLength { get; init; }

    /// <summary>The new chain's length, tensioned and standing: its baseline, if it was measured.</summary>
    public MeasuredLength? NewLength { get; init; }

    /// <summary>How long the swap took, if it was said.</summary>
    public double? HoursWorked { get; init; }

    /// <summary>Who did it; empty for whoever reports it.</summary>
    public string DoneBy { get; init; } = "";

    /// <summary>Whether the sprockets of the drive were replaced with it.</summary>
    public bool WithSprockets { get; init; }

    /// <summary>A person's yes to what was asked about it.</summary>
    public bool Confirmed { get; init; }

    /// <summary>Whether its parts came from the plant's stock.</summary>
    public bool FromStock { get; init; } = true;

    /// <summary>What was used, if it was said; null for what such a swap takes.</summary>
    public IReadOnlyList<PartNeed>? Material { get; init; }
}
