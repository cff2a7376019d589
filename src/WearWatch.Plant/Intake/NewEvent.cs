using WearWatch.Chains;

namespace WearWatch.Plant.Intake;

/// <summary>An event on its way in, as it was told.</summary>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="Kind">What happened.</param>
/// <param name="At">When; this or a counter is needed.</param>
/// <param name="CounterBeforeH">The hour counter just before.</param>
/// <param name="CounterAfterH">The hour counter just after.</param>
/// <param name="Note">What else the person wanted to say.</param>
/// <param name="ToldBy">Who or what told it.</param>
public sealed record NewEvent(
    string Key, string Chain, ChainEventKind Kind, DateTimeOffset? At, double? CounterBeforeH, double? CounterAfterH, string Note,
    string ToldBy)
{
    /// <summary>The supplier's lot of the chain that was fitted, or empty.</summary>
    public string Lot { get; init; } = "";

    /// <summary>What was applied; of an oiling only.</summary>
    public OilApplied Oil { get; init; } = OilApplied.Untold;
}
