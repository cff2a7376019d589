using WearWatch.Phrases;

namespace WearWatch.Chains.Links;

/// <summary>What of a maker's table cannot be.</summary>
/// <param name="Field">Which figure: the name of the property of <see cref="LinkTableEntry"/>.</param>
/// <param name="Reason">Why, and what to do.</param>
public sealed record LinkTableFault(string Field, Phrase Reason);
