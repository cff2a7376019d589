using System.Security.Claims;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Whether a session still stands. Every request and every act on an open page asks, so that a session that was ended, or a role
/// that was taken away, is gone at once.
/// </summary>
public sealed class Standing(SessionDesk sessions, SetUp setUp)
{
    /// <summary>
    /// The session as it is now, with the roles of now; null when it has ended: signed out, too old, a new password or role, a
    /// person switched off, a tablet withdrawn.
    /// </summary>
    /// <param name="session">Who it was.</param>
    /// <param name="isUse">Whether somebody uses it right now, which puts its end off.</param>
    /// <param name="ct">Gives up.</param>
    public async Task<ClaimsPrincipal?> NowAsync(ClaimsPrincipal session, bool isUse, CancellationToken ct = default)
    {
        if (session.IsOpen()) return await setUp.IsDoneAsync(ct) ? null : session;
        if (session.SessionId() is not { } id || await sessions.FindAsync(id, ct) is not { } found) return null;
        if (isUse) await sessions.TouchAsync(found.Session);
        return Who.Of(found.Person, IdentityConstants.ApplicationScheme, found.Session);
    }

    /// <summary>Looks at the cookie of a request.</summary>
    public static async Task CheckAsync(CookieValidatePrincipalContext cookie)
    {
        var standing = cookie.HttpContext.RequestServices.GetRequiredService<Standing>();
        if (await standing.NowAsync(cookie.Principal!, isUse: true, cookie.HttpContext.RequestAborted) is { } now)
            cookie.ReplacePrincipal(now);
        else cookie.RejectPrincipal();
    }
}
