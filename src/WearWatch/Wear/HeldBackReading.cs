using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>A reading that was not used, with why and what it may have been meant to be.</summary>
/// <param name="ReadingIndex">Which of the chain's readings, from 0.</param>
/// <param name="Reason">Why it is held back, in plain words.</param>
/// <param name="Corrections">What would make it fit, likeliest first; may be empty.</param>
public sealed record HeldBackReading(int ReadingIndex, Phrase Reason, IReadOnlyList<Phrase> Corrections);
