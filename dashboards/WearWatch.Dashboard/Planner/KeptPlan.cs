using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;

namespace WearWatch.Dashboard.Planner;

/// <summary>The plan that is kept, with its orders.</summary>
/// <param name="Picture">What it was made from.</param>
/// <param name="Plan">The swaps and their costs.</param>
/// <param name="Orders">What must be ordered.</param>
public sealed record KeptPlanView(PlanPicture Picture, SwapPlan Plan, IReadOnlyList<PartOrder> Orders)
{
    /// <summary>The lines with a chain in the plan.</summary>
    public IReadOnlyList<string> Lines =>
        [.. Picture.Faces.Values.Select(f => f.Row.Line).Distinct().Order(StringComparer.Ordinal)];
}

/// <summary>Works out the plan that is kept, for the order list and everything that leaves the house.</summary>
public sealed class KeptPlan(PlanQuery query)
{
    public async Task<KeptPlanView> AskAsync(CancellationToken ct)
    {
        var picture = await query.AskAsync(ct);
        var plan = new SwapBoard(picture.Input).Count(picture.Swaps.ToDictionary(s => s.Key, s => s.Value.WindowId));
        return new KeptPlanView(picture, plan, OrderList.For(picture.Input, plan));
    }
}
