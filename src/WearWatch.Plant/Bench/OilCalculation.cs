using WearWatch.Lubrication;

namespace WearWatch.Plant.Bench;

/// <summary>How a chain is to be oiled.</summary>
/// <param name="Advice">How, with what and how much.</param>
/// <param name="Plan">How often.</param>
public sealed record OilCalculation(OilAdvice Advice, OilingPlan Plan)
{
    /// <summary>What to remember before it is touched.</summary>
    public required IReadOnlyList<Phrase> Cautions { get; init; }

    /// <summary>Whether it lifts or holds a load; then oil heals no finding.</summary>
    public required bool HoldsLoad { get; init; }
}
