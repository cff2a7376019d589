namespace WearWatch.Signals.Passes;

/// <summary>How far a count has to stand out to be believed. Set on simulated trains: docs/signals.md.</summary>
/// <param name="Clear">
/// Its least height, in robust standard deviations of all others. They hold the jitter, the links' own likeness by chance, which
/// no number of bursts takes away, and what of the speed is left.
/// </param>
/// <param name="LeadOfCounts">
/// By how many standard deviations it leads each other count that can be, by the scatter between bursts.
/// </param>
/// <param name="LeadOfKinds">By how many it leads each count of another way to see the chain.</param>
internal sealed record PatternProof(double Clear, double LeadOfCounts, double LeadOfKinds);
