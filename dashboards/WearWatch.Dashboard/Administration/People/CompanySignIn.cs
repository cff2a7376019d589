using Microsoft.AspNetCore.Authentication.OpenIdConnect;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Puts the sign-in with company accounts into the dashboard, where an OpenID provider is set.</summary>
internal static class CompanySignIn
{
    /// <summary>The scheme of the provider.</summary>
    public const string Scheme = "company account";

    public static void AddCompanySignIn(this IServiceCollection services, IConfiguration section)
    {
        services.AddOptions<OpenIdOptions>().Bind(section).ValidateDataAnnotations()
            .Validate(o => !o.IsOn || IsSafe(o.Authority),
                "OpenId:Authority has to be an address with https, such as https://login.example.org.")
            .Validate(o => !o.IsOn || o.ClientId.Length > 0, "OpenId:ClientId is missing: the provider's name of this program.")
            .ValidateOnStart();
        services.AddSingleton<CompanyTokens>().AddSingleton<CompanyDoor>();
        if (string.IsNullOrEmpty(section["Authority"])) return;
        services.AddAuthentication().AddOpenIdConnect(Scheme, _ => { });
        services.AddOptions<OpenIdConnectOptions>(Scheme).Configure<IOptions<OpenIdOptions>>((handler, asked) =>
            Describe(handler, asked.Value));
        services.AddHostedService<CompanyWatch>();
    }

    private static bool IsSafe(string authority) => Uri.TryCreate(authority, UriKind.Absolute, out var address)
        && (address.Scheme == "https" || (address.Scheme == "http" && address.IsLoopback));

    private static void Describe(OpenIdConnectOptions handler, OpenIdOptions asked)
    {
        (handler.Authority, handler.ClientId) = (asked.Authority, asked.ClientId);
        handler.ClientSecret = asked.ClientSecret.Length > 0 ? asked.ClientSecret : null;
        handler.RequireHttpsMetadata = asked.Authority.StartsWith("https", StringComparison.Ordinal);
        (handler.ResponseType, handler.ResponseMode, handler.UsePkce) = ("code", "query", true);
        (handler.CallbackPath, handler.SignInScheme) = ("/people/company/back", IdentityConstants.ExternalScheme);
        handler.SaveTokens = handler.GetClaimsFromUserInfoEndpoint = true;
        handler.MapInboundClaims = false;
        handler.Scope.Clear();
        foreach (var scope in asked.Scopes.Split(' ', StringSplitOptions.RemoveEmptyEntries)) handler.Scope.Add(scope);
        handler.ClaimActions.Clear(); // it would take the issuer away
        foreach (var claim in new[] { asked.NameClaim, asked.GroupsClaim, CompanyDoor.AccountClaim })
            handler.ClaimActions.Add(new Microsoft.AspNetCore.Authentication.OAuth.Claims.JsonKeyClaimAction(
                claim, System.Security.Claims.ClaimValueTypes.String, claim));
        // The way back is a plain visit, so cookies for the same site do; others need https.
        foreach (var cookie in new[] { handler.CorrelationCookie, handler.NonceCookie })
            (cookie.SameSite, cookie.SecurePolicy) = (SameSiteMode.Lax, CookieSecurePolicy.SameAsRequest);
        handler.Events.OnRemoteFailure = failure =>
        {
            failure.Response.Redirect(CompanyDoor.BackWith(CompanyDoor.Failed));
            failure.HandleResponse();
            return Task.CompletedTask;
        };
    }
}
