namespace WearWatch.Planning.Plans;

/// <summary>How hard to look for a better plan.</summary>
/// <param name="Gap">Ends when the plan is proven to cost at most this share more than the best; 0 looks to the end.</param>
/// <param name="TimeLimit">The proof ends then in any case, in processor time.</param>
public sealed record PlannerEffort(double Gap, TimeSpan TimeLimit)
{
    /// <summary>One percent within about ten seconds for 200 chains, of which the walks before the proof take three.</summary>
    public static PlannerEffort Usual { get; } = new(0.01, TimeSpan.FromSeconds(8));
}
