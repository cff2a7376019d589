namespace WearWatch.Plant.Tracking;

/// <summary>A chain of a set.</summary>
/// <param name="Id">The chain.</param>
/// <param name="Name">Its name.</param>
/// <param name="IsCondemned">Whether it was found to be condemned when it was last reviewed.</param>
/// <param name="ReplacedAt">When the chain that runs now replaced another; null where no replacement is recorded.</param>
internal sealed record LiftingMate(int Id, string Name, bool IsCondemned, DateTimeOffset? ReplacedAt);
