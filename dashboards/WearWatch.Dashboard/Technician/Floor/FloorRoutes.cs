using Microsoft.AspNetCore.Http.HttpResults;

namespace WearWatch.Dashboard.Technician.Floor;

/// <summary>
/// Where the technician's floor is served: one document under its own path, which its service worker keeps for hours without
/// signal.
/// </summary>
internal static class FloorRoutes
{
    /// <summary>Stricter than the pages': the floor needs no inline script and no style attribute.</summary>
    private const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; worker-src "
        + "'self'; "
        + "object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Maps the document, its labels' addresses and the list of files to keep.</summary>
    public static void MapFloor(this IEndpointRouteBuilder app)
    {
        // Open to everybody, since it holds nothing of the plant: what it shows it has to ask for, and the phone keeps no sign-in
        // page.
        var files = FloorFiles.Of(app.ServiceProvider.GetRequiredService<IWebHostEnvironment>().WebRootFileProvider);
        var floor = app.MapGroup("/floor").AllowAnonymous().ExcludeFromDescription();
        // They answer an IResult by name: what writes the endpoints out at build time does not see the components.
        floor.MapGet("/", IResult (HttpResponse response) => Shell(response, files));
        floor.MapGet("/at/{mark}/{chain:int}", IResult (HttpResponse response) => Shell(response, files));
        floor.MapGet("/files", () => Results.Json(new { files = files.Paths }));
    }

    private static RazorComponentResult<FloorShell> Shell(HttpResponse response, FloorFiles files)
    {
        response.Headers.ContentSecurityPolicy = Policy;
        response.Headers.CacheControl = "no-cache";
        return new RazorComponentResult<FloorShell>(new { files.Build });
    }
}
