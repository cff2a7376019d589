using System.Security.Cryptography;

namespace WearWatch.Dashboard.Security;

/// <summary>
/// Allows the browser to load from this host only; the one script that stands inside a page carries a number used once.
/// </summary>
public static class ContentPolicy
{
    private const string Item = "content-policy-nonce";

    /// <summary>The number that this answer's inline import map must carry.</summary>
    public static string NonceOf(HttpContext http) => http.Items[Item] as string ?? "";

    /// <summary>What says nothing about it is kept by no browser: it may tell of the plant.</summary>
    private static Task KeepOut(object response)
    {
        var headers = ((HttpResponse)response).Headers;
        if (headers.CacheControl.Count == 0) headers.CacheControl = "no-store";
        return Task.CompletedTask;
    }

    /// <summary>Adds the security headers to every answer.</summary>
    public static IApplicationBuilder UseContentPolicy(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        var nonce = Convert.ToBase64String(RandomNumberGenerator.GetBytes(16));
        http.Items[Item] = nonce;
        var headers = http.Response.Headers;
        // Radzen sets sizes and positions in style attributes, hence style-src-attr; style elements stay forbidden.
        headers.ContentSecurityPolicy =
            $"default-src 'self'; script-src 'self' 'nonce-{nonce}'; style-src 'self'; style-src-attr 'unsafe-inline'; "
            + "img-src 'self' data:; font-src 'self'; connect-src 'self'; object-src 'none'; base-uri 'self'; "
            + "form-action 'self'; frame-ancestors 'self'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        if (http.Request.IsHttps) headers.StrictTransportSecurity = "max-age=31536000";
        http.Response.OnStarting(KeepOut, http.Response);
        return next(http);
    });
}
