using System.Security.Claims;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Whether a session still stands. Every request asks, so that a role that is taken away is gone with the next one.
/// </summary>
public sealed class Standing(IDbContextFactory<WearDb> database, SetUp setUp)
{
    /// <summary>
    /// The session as it is now, with the roles of now; null when it has ended: a changed password, a person switched off, a
    /// tablet withdrawn.
    /// </summary>
    public async Task<ClaimsPrincipal?> NowAsync(ClaimsPrincipal session, CancellationToken ct = default)
    {
        if (session.IsOpen()) return await setUp.IsDoneAsync(ct) ? null : session;
        if (session.PersonId() is not { } id) return null;
        await using var db = await database.CreateDbContextAsync(ct);
        var person = await db.People.AsNoTracking().SingleOrDefaultAsync(p => p.Id == id, ct);
        if (person is null || person.IsOff || person.SecurityStamp != session.SecretStamp()) return null;
        var tablet = session.TabletId();
        if (tablet is not null && !await db.Tablets.AnyAsync(t => t.Id == tablet && t.WithdrawnAt == null, ct)) return null;
        return Who.Of(person, IdentityConstants.ApplicationScheme, tablet);
    }

    /// <summary>Looks at the cookie of a request.</summary>
    public static async Task CheckAsync(CookieValidatePrincipalContext cookie)
    {
        var standing = cookie.HttpContext.RequestServices.GetRequiredService<Standing>();
        if (await standing.NowAsync(cookie.Principal!, cookie.HttpContext.RequestAborted) is { } now)
            cookie.ReplacePrincipal(now);
        else cookie.RejectPrincipal();
    }
}
