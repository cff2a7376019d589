namespace WearWatch.Plant.Bench;

/// <summary>One line of an uncertainty budget.</summary>
/// <param name="Component">What is not known exactly.</param>
/// <param name="StandardUncertaintyPct">Its standard uncertainty, in percent of the nominal length.</param>
/// <param name="ShareOfVariancePct">Its share of the whole variance, 0 to 100.</param>
/// <param name="Source">Where the figure is from.</param>
public sealed record UncertaintyJson(Phrase Component, double StandardUncertaintyPct, double ShareOfVariancePct, Phrase Source);
