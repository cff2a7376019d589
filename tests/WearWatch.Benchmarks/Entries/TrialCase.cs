namespace WearWatch.Benchmarks.Entries;

/// <summary>What is known around an entry that is spoiled.</summary>
/// <param name="OtherCounterH">The counter of another chain on the line, read the same day; null where there is none.</param>
/// <param name="ToleranceHours">A counter so near to the right one is as good.</param>
public sealed record TrialCase(double? OtherCounterH, double ToleranceHours);
