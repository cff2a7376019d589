using System.Security.Claims;
using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.AspNetCore.Authentication.OpenIdConnect;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Options;
using Microsoft.IdentityModel.JsonWebTokens;
using Microsoft.IdentityModel.Protocols.OpenIdConnect;
using Microsoft.IdentityModel.Tokens;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Seals the tokens of the company's OpenID provider, reads them, and asks for new ones.</summary>
public sealed class CompanyTokens(
    IOptionsMonitor<OpenIdConnectOptions> handlers, IOptions<OpenIdOptions> options, IDataProtectionProvider protection)
{
    private const string LogoutEvent = "http://schemas.openid.net/event/backchannel-logout";
    private static readonly JsonWebTokenHandler reader = new() { MapInboundClaims = false };
    private readonly IDataProtector seal = protection.CreateProtector("tokens of the company account");

    private OpenIdConnectOptions Handler => handlers.Get(CompanySignIn.Scheme);

    /// <summary>Whom claims are about; null when they do not say it.</summary>
    public CompanyIdentity? Identify(IEnumerable<Claim> claims)
    {
        var all = claims.ToLookup(c => c.Type, c => c.Value);
        var (asked, account) = (options.Value, all[CompanyDoor.AccountClaim].FirstOrDefault() ?? "");
        return all["iss"].FirstOrDefault() is { } issuer && all["sub"].FirstOrDefault() is { } subject
            ? new CompanyIdentity(
                issuer, subject, all[asked.NameClaim].FirstOrDefault() ?? account, account,
                [.. all[asked.GroupsClaim].Distinct()])
            : null;
    }

    /// <summary>Seals what the plant's memory keeps of a session.</summary>
    public string Seal(string? idToken, string? refreshToken) =>
        seal.Protect(JsonSerializer.Serialize(new Kept(idToken, refreshToken)));

    /// <summary>Where a browser signs out at the provider; null where that has no such place.</summary>
    /// <remarks>OpenID Connect RP-Initiated Logout 1.0, 2.</remarks>
    public async Task<string?> LeaveAddressAsync(string sealedTokens, string home, CancellationToken ct)
    {
        if (await DescriptionAsync(ct) is not { EndSessionEndpoint: { Length: > 0 } place }) return null;
        return QueryHelpers.AddQueryString(place, new Dictionary<string, string?>
        {
            ["id_token_hint"] = Open(sealedTokens)?.IdToken,
            ["client_id"] = options.Value.ClientId,
            ["post_logout_redirect_uri"] = home,
        });
    }

    /// <summary>
    /// Asks the provider whether it still vouches for the person of a session: by new tokens (RFC 6749, 6), and by what it says
    /// of the person then.
    /// </summary>
    public async Task<CompanyStanding> AskAsync(string sealedTokens, CancellationToken ct)
    {
        if (Open(sealedTokens) is not { RefreshToken: { } refresh } kept) return CompanyStanding.Silent;
        if (await DescriptionAsync(ct) is not { } provider) return CompanyStanding.Silent;
        using var form = new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["grant_type"] = "refresh_token",
            ["refresh_token"] = refresh,
            ["client_id"] = options.Value.ClientId,
            ["client_secret"] = options.Value.ClientSecret,
        });
        using var answer = await Handler.Backchannel.PostAsync(provider.TokenEndpoint, form, ct);
        var given = new OpenIdConnectMessage(await answer.Content.ReadAsStringAsync(ct));
        if (!answer.IsSuccessStatusCode)
            return given.Error == "invalid_grant" ? CompanyStanding.No : CompanyStanding.Silent;
        var claims = (await ReadAsync(given.IdToken, provider)).Concat(await AskAboutAsync(given.AccessToken, provider, ct));
        return new CompanyStanding(
            true, [.. claims.Where(c => c.Type == options.Value.GroupsClaim).Select(c => c.Value).Distinct()],
            Seal(given.IdToken ?? kept.IdToken, given.RefreshToken ?? refresh));
    }

    /// <summary>What the provider says that it has ended; null when that is not to be believed.</summary>
    public async Task<CompanyLogout?> ReadLogoutAsync(string token, CancellationToken ct)
    {
        if (await DescriptionAsync(ct) is not { } provider) return null;
        var claims = (await ReadAsync(token, provider)).ToLookup(c => c.Type, c => c.Value);
        var isLogout = claims["events"].Any(e => e.Contains(LogoutEvent, StringComparison.Ordinal)) && !claims["nonce"].Any();
        var (subject, session) = (claims["sub"].FirstOrDefault() ?? "", claims["sid"].FirstOrDefault() ?? "");
        return isLogout && (subject.Length > 0 || session.Length > 0)
            ? new CompanyLogout(provider.Issuer, subject, session)
            : null;
    }

    /// <summary>The claims of a token that the provider signed for this program; none of any other.</summary>
    private async Task<IEnumerable<Claim>> ReadAsync(string? token, OpenIdConnectConfiguration provider)
    {
        if (string.IsNullOrEmpty(token)) return [];
        var read = await reader.ValidateTokenAsync(token, new TokenValidationParameters
        {
            ValidIssuer = provider.Issuer,
            ValidAudience = options.Value.ClientId,
            IssuerSigningKeys = provider.SigningKeys,
        });
        return read.IsValid ? ((JsonWebToken)read.SecurityToken).Claims : [];
    }

    private async Task<IEnumerable<Claim>> AskAboutAsync(
        string? accessToken, OpenIdConnectConfiguration provider, CancellationToken ct)
    {
        if (provider.UserInfoEndpoint is not { Length: > 0 } place || accessToken is null) return [];
        using var request = new HttpRequestMessage(HttpMethod.Get, place);
        request.Headers.Authorization = new("Bearer", accessToken);
        using var answer = await Handler.Backchannel.SendAsync(request, ct);
        if (!answer.IsSuccessStatusCode) return [];
        using var about = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(ct));
        var identity = new ClaimsIdentity();
        foreach (var action in Handler.ClaimActions) action.Run(about.RootElement, identity, provider.Issuer);
        return identity.Claims;
    }

    private async Task<OpenIdConnectConfiguration?> DescriptionAsync(CancellationToken ct)
    {
        try
        {
            return await Handler.ConfigurationManager!.GetConfigurationAsync(ct);
        }
        catch (InvalidOperationException)
        {
            return null; // the provider does not answer
        }
    }

    private Kept? Open(string sealedTokens)
    {
        try
        {
            return JsonSerializer.Deserialize<Kept>(seal.Unprotect(sealedTokens));
        }
        catch (CryptographicException)
        {
            return null; // sealed by another plant
        }
    }

    private sealed record Kept(string? IdToken, string? RefreshToken);
}
