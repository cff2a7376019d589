using WearWatch.Phrases;

namespace WearWatch.Lifting.Examinations;

/// <summary>What a region's rule says of the months between two thorough examinations.</summary>
/// <param name="Months">The months to begin with; null where the rule names none and the plant has to.</param>
/// <param name="MostMonths">No longer than this without a written scheme; null where the rule names no number.</param>
/// <param name="KnowsWrittenScheme">Whether that law lets a competent person's written scheme set another interval.</param>
/// <param name="Words">The rule in a sentence.</param>
/// <param name="Source">Who says so.</param>
/// <param name="Certainty">How it is known: published, second hand, from memory.</param>
public sealed record IntervalRule(
    int? Months, int? MostMonths, bool KnowsWrittenScheme, Phrase Words, string Source, Phrase Certainty);
