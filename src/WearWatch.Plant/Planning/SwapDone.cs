namespace WearWatch.Plant.Planning;

/// <summary>What a person says of a swap that was done.</summary>
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

    /// <summary>Whether the sprockets of the drive were replaced with it.</summary>
    public bool WithSprockets { get; init; }

    /// <summary>Whether its parts came from the plant's stock.</summary>
    public bool FromStock { get; init; } = true;
}
