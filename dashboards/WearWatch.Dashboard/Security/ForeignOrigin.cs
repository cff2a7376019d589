using WearWatch.Dashboard.Kit.Answers;

namespace WearWatch.Dashboard.Security;

/// <summary>
/// Refuses what another site's page sends with a person's cookie: live connections, which browsers open across sites, and every
/// request that may change something. Browsers state the page's origin (RFC 6454) with both.
/// </summary>
internal static class ForeignOrigin
{
    /// <summary>Adds the refusal. After forwarded headers, before who somebody is.</summary>
    public static IApplicationBuilder RefuseForeignOrigin(this IApplicationBuilder app) =>
        app.Use((http, next) => IsForeign(http) ? RefuseAsync(http) : next(http));

    private static bool IsForeign(HttpContext http)
    {
        var request = http.Request;
        if (request.Headers.Origin is not [{ Length: > 0 } origin, ..]) return false;
        var changesNothing = HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
        if (changesNothing && !IsLive(http)) return false;
        return !string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }

    // HTTP/2 opens a live connection by CONNECT, which is none of the methods that change nothing.
    private static bool IsLive(HttpContext http) =>
        http.WebSockets.IsWebSocketRequest || http.Request.Headers.Upgrade.Count > 0
            || http.Request.Path.StartsWithSegments("/_blazor");

    private static Task RefuseAsync(HttpContext http) => Problems.Of("foreign_origin",
        $"Another site's page",
        $"This was sent by a page of another site. If WearWatch stands behind a proxy, let the proxy pass the host name on. "
        + $"Nothing was stored.").ExecuteAsync(http);
}
