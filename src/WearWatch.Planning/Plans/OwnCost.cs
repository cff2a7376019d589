using WearWatch.Planning.Costs;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Plans;

/// <summary>What a swap at one moment costs in expectation by itself, whatever else is planned.</summary>
/// <param name="UnusedLife">The price of the chain's life that is thrown away.</param>
/// <param name="PastLimit">The sprockets, if the chain passes its limit before.</param>
/// <param name="Breakdown">The breakdown, if the chain fails before.</param>
/// <param name="ProbabilityPast">Probability that the limit is passed before.</param>
/// <param name="ProbabilityFailed">Probability that the chain fails before.</param>
public readonly record struct OwnCost(
    double UnusedLife, double PastLimit, double Breakdown, double ProbabilityPast, double ProbabilityFailed)
{
    /// <summary>All of it.</summary>
    public double Total => UnusedLife + PastLimit + Breakdown;

    /// <summary>The cost of swapping a chain after so many running hours from now.</summary>
    /// <remarks>
    /// <c>price x E[unused share] + sprockets x P(past limit) + breakdown x P(failed)</c>, over the whole distribution of the
    /// hours to the limit. The new chain's price and the ordinary work are left out: every chain is swapped once, whenever it is.
    /// </remarks>
    public static OwnCost Of(SwapTask task, double hoursAhead, PlanningCosts costs) =>
        After(task, hoursAhead, costs) with { UnusedLife = task.ChainPrice * task.Left.UnusedLife(hoursAhead, task.HoursRun) };

    /// <summary>The cost of leaving a chain on until its next chance after the horizon.</summary>
    /// <remarks>
    /// No life is thrown away yet: the next plan will choose that swap's moment. Its risk until then is counted in full.
    /// </remarks>
    public static OwnCost After(SwapTask task, double hoursAhead, PlanningCosts costs)
    {
        var past = task.Left.ProbabilityPast(hoursAhead);
        var failed = task.Left.ProbabilityFailed(hoursAhead, costs.MeanHoursToFailurePastLimit);
        return new OwnCost(0, task.SprocketPrice * past, costs.BreakdownOf(task.Line) * failed, past, failed);
    }

    /// <summary>The costs of parallel strands swapped together; the probabilities are those of the worst.</summary>
    public static OwnCost operator +(OwnCost a, OwnCost b) => new(
        a.UnusedLife + b.UnusedLife, a.PastLimit + b.PastLimit, a.Breakdown + b.Breakdown,
        Math.Max(a.ProbabilityPast, b.ProbabilityPast), Math.Max(a.ProbabilityFailed, b.ProbabilityFailed));

    /// <summary>The costs of parallel strands swapped together, for languages without operators.</summary>
    public static OwnCost Add(OwnCost left, OwnCost right) => left + right;
}
