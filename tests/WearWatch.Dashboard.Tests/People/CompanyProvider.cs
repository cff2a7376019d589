using System.Collections.Concurrent;
using System.Security.Claims;
using Microsoft.AspNetCore;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using Microsoft.IdentityModel.JsonWebTokens;
using Microsoft.IdentityModel.Tokens;
using OpenIddict.Abstractions;
using OpenIddict.Server;
using OpenIddict.Server.AspNetCore;
using static OpenIddict.Abstractions.OpenIddictConstants;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>A company's OpenID provider: OpenIddict's server in this process, at an address of its own.</summary>
public sealed class CompanyProvider : IAsyncDisposable
{
    private const string Client = "wearwatch", Secret = "a secret of two", Cookie = "provider-account";
    private const string Scheme = OpenIddictServerAspNetCoreDefaults.AuthenticationScheme;
    private WebApplication? server;

    /// <summary>The accounts by their numbers; one who is taken out is let in no more.</summary>
    public ConcurrentDictionary<string, CompanyAccount> Accounts { get; } = [];

    public string Address { get; private set; } = "";

    /// <summary>The settings of a dashboard that asks this provider.</summary>
    public IReadOnlyList<(string Key, string Value)> Settings =>
    [
        ("OpenId:Authority", Address), ("OpenId:ClientId", Client), ("OpenId:ClientSecret", Secret),
        ("OpenId:Name", "mill account"), ("OpenId:Check", "00:00:00.1"),
        ("OpenId:Groups:chain-crew", "technician"), ("OpenId:Groups:planning", "technician, planner"),
        ("OpenId:Groups:visitors", "none"),
    ];

    public async Task StartAsync()
    {
        // Beside the tests lie the dashboard's settings, and its port is not the provider's.
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = Path.GetTempPath() });
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddOpenIddict().AddServer(Describe);
        server = builder.Build();
        server.UseAuthentication();
        server.MapGet("/authorize", Authorize);
        server.MapGet("/login", Login);
        server.MapPost("/token", (Delegate)ExchangeAsync);
        server.MapGet("/about", (Delegate)AboutAsync);
        server.MapMethods("/leave", ["GET", "POST"], Leave);
        await server.StartAsync();
        Address = server.Urls.Single() + "/";
    }

    /// <summary>A logout token as the provider sends it (OpenID Connect Back-Channel Logout 1.0, 2.4).</summary>
    public string LogoutToken(string session, string audience = Client)
    {
        var signing = server!.Services.GetRequiredService<IOptionsMonitor<OpenIddictServerOptions>>().CurrentValue
            .SigningCredentials[0];
        return new JsonWebTokenHandler().CreateToken(new SecurityTokenDescriptor
        {
            Issuer = Address,
            Audience = audience,
            SigningCredentials = signing,
            Claims = new Dictionary<string, object>
            {
                ["sid"] = session,
                ["events"] = new Dictionary<string, object>
                {
                    ["http://schemas.openid.net/event/backchannel-logout"] = new Dictionary<string, object>(),
                },
            },
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (server is not null) await server.DisposeAsync();
    }

    private static void Describe(OpenIddictServerBuilder server)
    {
        server.EnableDegradedMode(); // no store: codes and tokens say all
        server.SetAuthorizationEndpointUris("authorize").SetTokenEndpointUris("token").SetUserInfoEndpointUris("about")
            .SetEndSessionEndpointUris("leave");
        server.AllowAuthorizationCodeFlow().AllowRefreshTokenFlow().RequireProofKeyForCodeExchange();
        server.RegisterScopes(Scopes.Profile, Scopes.OfflineAccess);
        server.AddEphemeralEncryptionKey().AddEphemeralSigningKey();
        server.UseAspNetCore().DisableTransportSecurityRequirement().EnableAuthorizationEndpointPassthrough()
            .EnableTokenEndpointPassthrough().EnableUserInfoEndpointPassthrough().EnableEndSessionEndpointPassthrough();
        server.AddEventHandler<OpenIddictServerEvents.ValidateAuthorizationRequestContext>(one => one.UseInlineHandler(asked =>
        {
            if (asked.ClientId != Client || !asked.RedirectUri!.EndsWith("/people/company/back", StringComparison.Ordinal))
                asked.Reject(Errors.InvalidClient);
            return default;
        }));
        server.AddEventHandler<OpenIddictServerEvents.ValidateTokenRequestContext>(one => one.UseInlineHandler(asked =>
        {
            if (asked.ClientId != Client || asked.ClientSecret != Secret) asked.Reject(Errors.InvalidClient);
            return default;
        }));
        server.AddEventHandler<OpenIddictServerEvents.ValidateEndSessionRequestContext>(
            one => one.UseInlineHandler(_ => default));
    }

    // Who has signed in at the provider is known there by a cookie; anybody else is asked for the account.
    private IResult Authorize(HttpContext http)
    {
        var asked = http.GetOpenIddictServerRequest()!;
        if (http.Request.Cookies[Cookie] is { } id && Accounts.TryGetValue(id, out var account))
        {
            var person = Principal(id, account, http.Request.Cookies[Cookie + "-session"]!);
            person.SetScopes(asked.GetScopes());
            return Results.SignIn(person, authenticationScheme: Scheme);
        }

        var back = System.Net.WebUtility.HtmlEncode(http.Request.Path + http.Request.QueryString);
        return Results.Content(
            $"""
            <!DOCTYPE html><html lang="en"><title>Mill sign-in</title><main><h1>Mill sign-in</h1>
            <form action="/login"><input type="hidden" name="back" value="{back}">
            <label>Account <input name="account"></label> <button>Sign in at the mill</button></form></main></html>
            """,
            "text/html");
    }

    private static IResult Login(HttpContext http, string account, string back)
    {
        http.Response.Cookies.Append(Cookie, account);
        http.Response.Cookies.Append(Cookie + "-session", Guid.NewGuid().ToString("N"));
        return Results.Redirect(back);
    }

    private async Task<IResult> ExchangeAsync(HttpContext http)
    {
        var known = (await http.AuthenticateAsync(Scheme)).Principal!;
        var id = known.GetClaim(Claims.Subject)!;
        if (!Accounts.TryGetValue(id, out var account))
        {
            return Results.Forbid(
                new AuthenticationProperties(new Dictionary<string, string?>
                {
                    [OpenIddictServerAspNetCoreConstants.Properties.Error] = Errors.InvalidGrant,
                }), [Scheme]);
        }

        var person = Principal(id, account, known.GetClaim("sid")!);
        person.SetScopes(known.GetScopes());
        return Results.SignIn(person, authenticationScheme: Scheme);
    }

    private async Task<IResult> AboutAsync(HttpContext http)
    {
        var id = (await http.AuthenticateAsync(Scheme)).Principal!.GetClaim(Claims.Subject)!;
        return Accounts.TryGetValue(id, out var account)
            ? Results.Json(new { sub = id, name = account.Name, groups = account.Groups })
            : Results.Unauthorized();
    }

    private static IResult Leave(HttpContext http)
    {
        http.Response.Cookies.Delete(Cookie);
        return Results.SignOut(new AuthenticationProperties { RedirectUri = "/" }, [Scheme]);
    }

    private static ClaimsPrincipal Principal(string id, CompanyAccount account, string session)
    {
        var identity = new ClaimsIdentity("provider", Claims.Name, Claims.Role);
        identity.SetClaim(Claims.Subject, id).SetClaim(Claims.Name, account.Name)
            .SetClaim(Claims.PreferredUsername, account.Login).SetClaim("sid", session);
        identity.SetDestinations(_ => [Destinations.AccessToken, Destinations.IdentityToken]);
        return new ClaimsPrincipal(identity);
    }
}
