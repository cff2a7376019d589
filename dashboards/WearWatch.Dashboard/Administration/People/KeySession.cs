using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>A request that carries a key instead of a session.</summary>
internal sealed class KeySession(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory log, UrlEncoder encoder, KeyDesk keys)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, log, encoder)
{
    public const string Name = "key";
    private const string Before = "Bearer ";

    /// <summary>The key that a request carries; null when it has none.</summary>
    public static string? TokenOf(HttpRequest request) =>
        request.Headers.Authorization.ToString() is var header && header.StartsWith(Before, StringComparison.OrdinalIgnoreCase)
            ? header[Before.Length..].Trim()
            : null;

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (TokenOf(Request) is not { } token) return AuthenticateResult.NoResult();
        return await keys.FindAsync(token, Context.RequestAborted) is { } key
            ? AuthenticateResult.Success(new AuthenticationTicket(Who.Of(key, Name), Name))
            : AuthenticateResult.Fail("The key is not known, or was withdrawn.");
    }
}
