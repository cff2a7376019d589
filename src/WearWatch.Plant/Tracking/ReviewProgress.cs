namespace WearWatch.Plant.Tracking;

/// <summary>How far a review has come.</summary>
/// <param name="Done">Chains assessed.</param>
/// <param name="Total">Chains to assess.</param>
public sealed record ReviewProgress(int Done, int Total);
