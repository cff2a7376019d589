namespace WearWatch.Wear;

/// <summary>One wear clock with its odds after the readings.</summary>
/// <param name="Weight">Probability of this clock, 0 to 1.</param>
/// <param name="Clock">The clock.</param>
/// <param name="Accounts">The accounts on it; their weights add up to one.</param>
public readonly record struct WeighedClock(double Weight, WearClock Clock, IReadOnlyList<Hypothesis> Accounts);
