using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>What a slip would mean for an entry.</summary>
/// <param name="Entry">The entry as it was meant.</param>
/// <param name="Words">What it was, for the person who entered it.</param>
/// <param name="LogLikelihood">ln of the probability density of the counter that was told, an hour.</param>
internal readonly record struct MeantEntry(Reading Entry, Phrase Words, double LogLikelihood);
