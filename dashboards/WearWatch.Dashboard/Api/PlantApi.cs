using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Overview.Glance;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Api;

internal static class PlantApi
{
    public static void Map(IEndpointRouteBuilder api) =>
        api.MapGet("/plant", AskAsync).WithSummary("The plant, and how many of its chains are in which condition")
            .WithTags("Plant");

    private static async Task<PlantJson> AskAsync(PlantSettings settings, GlanceQuery query, CancellationToken ct)
    {
        var plant = await settings.CurrentAsync(ct);
        var view = await query.AskAsync(ct);
        return new PlantJson
        {
            Name = plant.Name,
            TimeZone = plant.TimeZone,
            Utilisation = plant.Utilisation,
            RunningHPerWeek = (await settings.CalendarAsync(ct)).PerWeek.Hours,
            IsSimulated = plant.IsDemo,
            Chains = view.Chains,
            ChainsByCondition = view.Conditions.ToDictionary(c => c.Condition.Wire, c => c.Chains),
        };
    }
}
