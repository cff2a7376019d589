using WearWatch.Phrases;

namespace WearWatch.Gauging;

/// <summary>One line of an uncertainty budget.</summary>
/// <param name="Name">What is uncertain, in words.</param>
/// <param name="StandardUncertaintyPercent">Its standard uncertainty, in percent of elongation.</param>
/// <param name="Repeats">Whether it comes anew with every reading, and so makes readings scatter.</param>
/// <param name="Source">Where its size comes from.</param>
public sealed record UncertaintyComponent(Phrase Name, double StandardUncertaintyPercent, bool Repeats, Phrase Source);
