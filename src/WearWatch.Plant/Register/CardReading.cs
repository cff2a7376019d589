using WearWatch.Chains;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Register;

/// <summary>What was understood of a card that is being written.</summary>
/// <param name="Card">The card as far as it could be read; null while its pitch is not known.</param>
/// <param name="Faults">What is wrong, field by field; a card with faults is not kept.</param>
public sealed record CardReading(ChainCard? Card, IReadOnlyList<Refusal> Faults);
