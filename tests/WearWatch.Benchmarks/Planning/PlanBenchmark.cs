using System.Diagnostics;
using WearWatch.Planning.Plans;

namespace WearWatch.Benchmarks.Planning;

/// <summary>
/// How near to the proven optimum the planner comes, in which time, and what it saves against earliest due date.
/// </summary>
internal static class PlanBenchmark
{
    /// <summary>Above this share over the proven optimum the benchmark fails.</summary>
    private const double AllowedOverOptimum = 0.015;

    /// <summary>Longer than this the usual effort may not take.</summary>
    private static readonly TimeSpan AllowedTime = TimeSpan.FromSeconds(10);

    /// <summary>
    /// Plans three plants, and one with crew hours cut to 60 %, of which only an answer is asked; true when each keeps its
    /// bounds.
    /// </summary>
    public static async Task<bool> RunAsync(TextWriter output, TimeSpan proofLimit)
    {
        var good = true;
        foreach (var seed in new[] { 1, 2, 3 }) good &= await RunAsync(output, $"seed {seed}", LargePlant.Of(seed), proofLimit);
        await RunAsync(output, "seed 1, crew hours cut to 60 %", LargePlant.Of(1, crewShare: 0.6), proofLimit);
        return good;
    }

    private static async Task<bool> RunAsync(TextWriter output, string name, PlanInput input, TimeSpan proofLimit)
    {
        var (plan, took) = await Timed(input, PlannerEffort.Usual);
        var (again, _) = await Timed(input, PlannerEffort.Usual);
        var (best, proofTook) = await Timed(input, new PlannerEffort(0, proofLimit));
        var dueDate = SwapPlanner.ByEarliestDueDate(input).Cost.Total;
        var over = plan.Cost.Total / (best.SearchEnded ? best.Cost.Total : best.Bound) - 1;
        Say(output, $"{name}: {input.Tasks.Count} chains, {input.Tasks.Select(t => t.Line).Distinct().Count()} lines, "
            + $"{input.Windows.Select(w => w.Start).Distinct().Count()} dates");
        Say(output, $"  plan                {plan.Cost.Total,10:0}   in {took.TotalSeconds:0.0} s, gap shown {plan.Gap:P2}, "
            + $"ended by its gap: {plan.SearchEnded}, same plan twice: {plan.Placements.SequenceEqual(again.Placements)}");
        Say(output, $"  {(best.SearchEnded ? "proven optimum" : "bound only    ")}      "
            + $"{(best.SearchEnded ? best.Cost.Total : best.Bound),10:0}   in {proofTook.TotalSeconds:0.0} s; the plan is "
            + $"{over:P2} above it");
        Say(output, $"  earliest due date   {dueDate,10:0}   the plan saves {1 - plan.Cost.Total / dueDate:P1} of it");
        Say(output, $"  unused life {plan.Cost.UnusedLife:0}, past limit {plan.Cost.PastLimit:0}, breakdowns "
            + $"{plan.Cost.Breakdowns:0} ({plan.Cost.ExpectedBreakdowns:0.0}), stops {plan.Cost.Stops:0}, overtime "
            + $"{plan.Cost.Overtime:0}, express {plan.Cost.Express:0}; {plan.Remarks.Count} remarks");
        return over <= AllowedOverOptimum && took <= AllowedTime;
    }

    private static async Task<(SwapPlan Plan, TimeSpan Took)> Timed(PlanInput input, PlannerEffort effort)
    {
        var watch = Stopwatch.StartNew();
        var plan = await SwapPlanner.ProposeAsync(input, effort);
        return (plan, watch.Elapsed);
    }

    private static void Say(TextWriter output, string text) => output.WriteLine(text);
}
