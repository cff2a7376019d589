namespace WearWatch.Dashboard.Api;

/// <summary>The description of webhooks and of the machines' messages (AsyncAPI 3.0), beside that of the API.</summary>
internal static class AsyncApi
{
    private const string Name = "asyncapi.json";

    public static void Map(IEndpointRouteBuilder app) =>
        app.MapGet("/asyncapi/v1.json", () => Results.Stream(
            typeof(AsyncApi).Assembly.GetManifestResourceStream(Name)!, "application/json; charset=utf-8"))
        .ExcludeFromDescription();
}
