using WearWatch.Phrases;

namespace WearWatch.Lifting.Examinations;

/// <summary>One thing that stands against a lifting chain's use.</summary>
/// <param name="Kind">What.</param>
/// <param name="Words">The sentence for screens and papers.</param>
public sealed record LiftingFault(LiftingFaultKind Kind, Phrase Words);
