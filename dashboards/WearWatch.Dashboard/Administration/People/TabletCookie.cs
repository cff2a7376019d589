using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Knows shared tablets again by a sealed cookie.</summary>
public sealed class TabletCookie(TabletDesk tablets, IDataProtectionProvider protection)
{
    /// <summary>The cookie by which a tablet is known.</summary>
    public const string Name = "wearwatch-tablet";

    private static readonly TimeSpan browsersKeepAtMost = TimeSpan.FromDays(400);
    private readonly IDataProtector seal = protection.CreateProtector("shared tablet");

    /// <summary>Makes the browser of a request a shared tablet. Says what stands against it; null when it is done.</summary>
    public async Task<Phrase?> MarkAsync(HttpContext http, string name, string by, CancellationToken ct = default)
    {
        var (tablet, fault) = await tablets.MarkAsync(name, by, ct);
        if (tablet is not null) Keep(http, tablet);
        return fault;
    }

    /// <summary>The tablet that a request comes from; null for every other browser.</summary>
    public async Task<TabletRow?> FindAsync(HttpContext http, CancellationToken ct = default) =>
        NumberOf(http.Request.Cookies[Name]) is { } id ? await tablets.FindAsync(id, ct) : null;

    /// <summary>Gives a browser its mark, or gives it anew, so that a tablet in use never forgets it.</summary>
    public void Keep(HttpContext http, TabletRow tablet) => http.Response.Cookies.Append(
        Name, seal.Protect(tablet.Id.ToString(CultureInfo.InvariantCulture)), new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = browsersKeepAtMost,
            SameSite = SameSiteMode.Lax,
            Secure = http.Request.IsHttps,
        });

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
