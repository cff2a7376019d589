using WearWatch.Lubrication;

namespace WearWatch.Plant.Bench;

/// <summary>How a chain is to be oiled.</summary>
/// <param name="Advice">How, with what and how much.</param>
/// <param name="Plan">How often.</param>
public sealed record OilCalculation(OilAdvice Advice, OilingPlan Plan);
