
namespace WearWatch.Dashboard.Api;

/// <summary>The REST API beside the pages.</summary>
internal static class ApiRoutes
{
    /// <summary>Maps <c>/api/v1</c> with its description at <c>/openapi/v1.json</c>, and that of events.</summary>
    public static void MapApi(this IEndpointRouteBuilder app)
    {
        app.MapOpenApi();
        AsyncApi.Map(app);
        var api = app.MapGroup("/api/v1");
        MeApi.Map(api);
        PlantApi.Map(api);
        ChainsApi.Map(api);
        CardApi.Map(api);
        ReadingsApi.Map(api);
        ReadingWordsApi.Map(api);
        EventsApi.Map(api);
        NoticesApi.Map(api);
        ImportsApi.Map(api);
        BenchApi.Map(api);
        FloorApi.Map(api);
        HandedApi.Map(api);
        HistoryApi.Map(api);
        OilApi.Map(api);
        PlanApi.Map(api);
        WorkOrdersApi.Map(api);
        InspectionsApi.Map(api);
        LinkMeasuresApi.Map(api);
        PartReadingsApi.Map(api);
        LiftingApi.Map(api);
    }
}
