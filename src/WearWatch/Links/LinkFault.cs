using WearWatch.Phrases;

namespace WearWatch.Links;

/// <summary>What of the measures told cannot be, or is missing.</summary>
/// <param name="Field">Which: the name of the property of <see cref="MeasuredLinks"/>.</param>
/// <param name="Reason">Why, and what would do.</param>
public sealed record LinkFault(string Field, Phrase Reason);
