using WearWatch.Planning.Plans;

namespace WearWatch.Plant.Planning;

/// <summary>Works out the saved plan, for the order list and everything that leaves the house.</summary>
public sealed class KeptPlan(PlanQuery query)
{
    /// <summary>The plan as it is kept, counted with the forecasts, shutdowns and spares of now.</summary>
    public async Task<KeptPlanView> AskAsync(CancellationToken ct)
    {
        var picture = await query.AskAsync(ct);
        var plan = new SwapCosting(picture.Input).Count(picture.Swaps.ToDictionary(s => s.Key, s => s.Value.WindowId));
        return new KeptPlanView(picture, plan, OrderList.For(picture.Input, plan));
    }
}
