using WearWatch.Phrases;

namespace WearWatch.Chains.Families;

/// <summary>A point of a checklist.</summary>
/// <param name="Point">What is looked at.</param>
/// <param name="Ask">What to look for, as a statement that is to be found or not.</param>
/// <param name="Advice">What to do when it is found.</param>
/// <param name="Source">Who says so.</param>
/// <param name="StopsTheChain">Whether the chain must not run on until a competent person has judged it.</param>
public sealed record CheckPoint(InspectionPoint Point, Phrase Ask, Phrase Advice, string Source, bool StopsTheChain = false);
