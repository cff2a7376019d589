using WearWatch.Chains;

namespace WearWatch.Lifting.Examinations;

/// <summary>What a law asks for before it names the months between two thorough examinations.</summary>
/// <param name="Region">Whose law.</param>
/// <param name="Use">What the chain is part of.</param>
/// <param name="LiftsPersons">Whether persons are lifted with it.</param>
/// <param name="HeavyUse">Whether its use is heavy by the words of the region's rule.</param>
/// <param name="LiftsPerWeek">Lifts in a week; null when nobody told.</param>
public readonly record struct IntervalCase(
    LawRegion Region, LiftingUse Use, bool LiftsPersons = false, bool HeavyUse = false, int? LiftsPerWeek = null);
