using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Marks browsers as shared tablets, knows them again by a sealed cookie, and withdraws the mark.</summary>
public sealed class TabletDesk(IDbContextFactory<WearDb> database, IDataProtectionProvider protection, PeopleNews news, TimeProvider clock)
{
    /// <summary>The cookie by which a tablet is known.</summary>
    public const string Cookie = "wearwatch-tablet";

    private static readonly TimeSpan browsersKeepAtMost = TimeSpan.FromDays(400);
    private readonly IDataProtector seal = protection.CreateProtector("shared tablet");

    /// <summary>All tablets, those in use first.</summary>
    public async Task<IReadOnlyList<TabletRow>> AskAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Tablets.AsNoTracking().OrderBy(t => t.WithdrawnAt != null).ThenBy(t => t.Name).ToListAsync(ct);
    }

    /// <summary>Makes the browser of a request a shared tablet. Says what stands against it; null when it is done.</summary>
    public async Task<string?> MarkAsync(HttpContext http, string name, string by, CancellationToken ct = default)
    {
        name = name.Trim();
        if (PersonName.Fault(name) is { } fault) return fault;
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.Tablets.AnyAsync(t => t.Name == name, ct)) return $"There is a tablet '{name}' already; a withdrawn one keeps its name too.";
        var tablet = new TabletRow { Name = name, MarkedBy = by, MarkedAt = clock.GetUtcNow() };
        db.Tablets.Add(tablet);
        await db.SaveChangesAsync(ct);
        Keep(http, tablet);
        return null;
    }

    /// <summary>The tablet that a request comes from; null for every other browser.</summary>
    public async Task<TabletRow?> FindAsync(HttpContext http, CancellationToken ct = default)
    {
        if (NumberOf(http.Request.Cookies[Cookie]) is not { } id) return null;
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Tablets.AsNoTracking().SingleOrDefaultAsync(t => t.Id == id && t.WithdrawnAt == null, ct);
    }

    /// <summary>Gives a browser its mark, or gives it anew, so that a tablet in use never forgets it.</summary>
    public void Keep(HttpContext http, TabletRow tablet) => http.Response.Cookies.Append(
        Cookie, seal.Protect(tablet.Id.ToString(CultureInfo.InvariantCulture)), new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = browsersKeepAtMost,
            SameSite = SameSiteMode.Lax,
            Secure = http.Request.IsHttps,
        });

    /// <summary>Ends a tablet: no PIN counts on it any more, and who switched on it is signed out.</summary>
    public async Task WithdrawAsync(int id, CancellationToken ct = default)
    {
        DateTimeOffset? now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await db.Tablets.Where(t => t.Id == id && t.WithdrawnAt == null).ExecuteUpdateAsync(t => t.SetProperty(r => r.WithdrawnAt, now), ct);
        news.Tell();
    }

    private int? NumberOf(string? cookie)
    {
        if (string.IsNullOrEmpty(cookie)) return null;
        try
        {
            return int.Parse(seal.Unprotect(cookie), CultureInfo.InvariantCulture);
        }
        catch (CryptographicException)
        {
            return null; // forged, or of another plant
        }
    }
}
