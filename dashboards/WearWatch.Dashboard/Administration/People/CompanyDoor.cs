using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>The ways to the company's OpenID provider and back.</summary>
public sealed class CompanyDoor(CompanyTokens tokens, CompanySessions sessions, IDataProtectionProvider protection)
{
    /// <summary>Where a person goes to connect the company account.</summary>
    public const string ToConnect = Go + "?connect=true";

    /// <summary>Where a person who has signed out here goes to sign out at the provider.</summary>
    public const string Leave = "/people/company/leave";

    /// <summary>Why the sign-in page is shown again: the provider does not answer.</summary>
    public const string Away = "away";

    /// <summary>Why the sign-in page is shown again: the way back did not come to its end.</summary>
    public const string Failed = "failed";

    /// <summary>The claim with the name of the account (OpenID Connect Core 1.0, 5.1).</summary>
    public const string AccountClaim = "preferred_username";

    /// <summary>Where the provider says that it has ended a session.</summary>
    internal const string SignedOut = "/people/company/signed-out";

    /// <summary>Where a person has come in.</summary>
    internal const string Done = "/people/company/done";

    /// <summary>Where a person sets out.</summary>
    internal const string Go = "/people/company";

    private const string LeaveCookie = "wearwatch-leave";
    private static readonly TimeSpan leavesWithin = TimeSpan.FromMinutes(5);
    private readonly ITimeLimitedDataProtector seal =
        protection.CreateProtector("leave the company account").ToTimeLimitedDataProtector();

    /// <summary>Where a person sets out to sign in, and comes back to.</summary>
    public static string Address(string? back) => Go + "?back=" + Uri.EscapeDataString(LocalAddress.Of(back));

    /// <summary>The sign-in page with why it is shown again.</summary>
    public static string BackWith(string why) => "/people/sign-in?company=" + why;

    /// <summary>Whether the browser of a request has signed out here and not yet at the provider.</summary>
    public static bool IsStillIn(HttpContext http) => http.Request.Cookies.ContainsKey(LeaveCookie);

    /// <summary>Keeps where the person of a session signs out at the provider. To be called before the session ends.</summary>
    public async Task OpenForLeavingAsync(HttpContext http)
    {
        if (http.User.SessionId() is not { } session || await sessions.TokensAsync(session) is not { } sealedTokens) return;
        var home = $"{http.Request.Scheme}://{http.Request.Host}/people/sign-in";
        if (await tokens.LeaveAddressAsync(sealedTokens, home, http.RequestAborted) is not { } address) return;
        http.Response.Cookies.Append(LeaveCookie, seal.Protect(address, leavesWithin), new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = leavesWithin,
            SameSite = SameSiteMode.Lax,
            Secure = http.Request.IsHttps,
        });
    }

    /// <summary>Where the browser of a request signs out at the provider; null when it has no business there.</summary>
    internal string? TakeLeave(HttpContext http)
    {
        var cookie = http.Request.Cookies[LeaveCookie];
        http.Response.Cookies.Delete(LeaveCookie);
        try
        {
            return string.IsNullOrEmpty(cookie) ? null : seal.Unprotect(cookie);
        }
        catch (CryptographicException)
        {
            return null; // forged, or too old
        }
    }
}
