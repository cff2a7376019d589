using System.Net.Http.Headers;
using System.Text;
using System.Web;

namespace WearWatch.Storage.Series;

/// <summary>
/// Lets the client write to InfluxDB 1: the address <c>/api/v2/write</c> becomes <c>/write</c>, a token <c>user:password</c> a
/// password.
/// </summary>
internal sealed class Version1Writing() : DelegatingHandler(new SocketsHttpHandler())
{
    private const string Written = "/api/v2/write";

    protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        if (request.RequestUri is { } uri && uri.AbsolutePath.EndsWith(Written, StringComparison.Ordinal))
            request.RequestUri = Translated(uri);
        if (request.Headers.Authorization is { Scheme: "Token", Parameter: var token })
            request.Headers.Authorization = Basic(token ?? "");
        return base.SendAsync(request, cancellationToken);
    }

    /// <summary>Tokens are strange to version 1: one without a password is left out, since it would be refused.</summary>
    internal static AuthenticationHeaderValue? Basic(string token) => token.Contains(':', StringComparison.Ordinal)
        ? new AuthenticationHeaderValue("Basic", Convert.ToBase64String(Encoding.UTF8.GetBytes(token)))
        : null;

    private static Uri Translated(Uri uri)
    {
        var asked = HttpUtility.ParseQueryString(uri.Query);
        var bucket = (asked["bucket"] ?? "").Split('/', 2);
        var policy = bucket.Length == 2 ? "&rp=" + Uri.EscapeDataString(bucket[1]) : "";
        var precision = asked["precision"] switch { "us" => "u", null or "" => "ns", var other => other };
        return new UriBuilder(uri)
        {
            Path = uri.AbsolutePath[..^Written.Length] + "/write",
            Query = $"db={Uri.EscapeDataString(bucket[0])}{policy}&precision={precision}",
        }.Uri;
    }
}
