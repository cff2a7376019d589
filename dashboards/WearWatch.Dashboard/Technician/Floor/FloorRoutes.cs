using Microsoft.AspNetCore.Http.HttpResults;
using WearWatch.Dashboard.Kit.Language;

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
        var root = app.ServiceProvider.GetRequiredService<IWebHostEnvironment>().WebRootFileProvider;
        var (files, keys) = (FloorFiles.Of(root), FloorTexts.KeysIn(root));
        var floor = app.MapGroup("/floor").AllowAnonymous().ExcludeFromDescription();
        // They answer an IResult by name: what writes the endpoints out at build time does not see the components.
        floor.MapGet("/", IResult (HttpResponse response) => Shell(response, files));
        floor.MapGet("/at/{mark}/{chain:int}", IResult (HttpResponse response) => Shell(response, files));
        floor.MapGet("/language/{code}.json", IResult (string code, HttpResponse response) => Language(code, response, keys));
        floor.MapGet("/files", () => Results.Json(new { build = files.Build, files = files.Paths, sums = files.Sums }));
    }

    // Asked for anew by a phone with signal, and kept by it for when there is none.
    private static IResult Language(string code, HttpResponse response, IReadOnlyCollection<string> keys)
    {
        if (Tongue.Of(code) is not { } tongue) return Results.NotFound();
        response.Headers.CacheControl = "no-cache";
        return Results.Json(FloorLanguage.Of(tongue, keys));
    }

    private static RazorComponentResult<FloorShell> Shell(HttpResponse response, FloorFiles files)
    {
        response.Headers.ContentSecurityPolicy = Policy;
        response.Headers.CacheControl = "no-cache";
        return new RazorComponentResult<FloorShell>(new { files.Build });
    }
}
