namespace WearWatch.Planning.Plans;

/// <summary>How hard to look for a better plan.</summary>
/// <param name="Gap">Ends when the plan is proven to cost at most this share more than the best; 0 looks to the end.</param>
/// <param name="TimeLimit">The proof ends then in any case, in processor time.</param>
public sealed record PlannerEffort(double Gap, TimeSpan TimeLimit)
{
    /// <summary>
    /// One percent. For 200 chains the walks before the proof take some three seconds on two cores, so that a person waits ten or
    /// so.
    /// </summary>
    public static PlannerEffort Usual { get; } = new(0.01, TimeSpan.FromSeconds(8));
}
