using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Knows by a sealed cookie from which browsers a person has come in before, so that a stranger who guesses at the name does not
/// keep the person out.
/// </summary>
public sealed class DeviceCookie(IDataProtectionProvider protection)
{
    /// <summary>The cookie by which a device is known.</summary>
    public const string Name = "wearwatch-device";

    private const int MarkBytes = 16;
    private static readonly TimeSpan kept = TimeSpan.FromDays(90);
    private readonly IDataProtector seal = protection.CreateProtector("known device");

    /// <summary>The device's mark if that person has come in from it before; else null.</summary>
    public string? MarkFor(HttpContext http, PersonRow person) =>
        Read(http) is [var mark, .. var people] && people.Contains($"{person.Id}") ? mark : null;

    /// <summary>Keeps that a person came in from this device.</summary>
    public void Keep(HttpContext http, PersonRow person)
    {
        var known = Read(http) ?? [Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(MarkBytes))];
        var text = string.Join(' ', known.Append($"{person.Id}").Distinct());
        http.Response.Cookies.Append(Name, seal.Protect(text), new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = kept,
            SameSite = SameSiteMode.Strict,
            Secure = http.Request.IsHttps,
        });
    }

    private string[]? Read(HttpContext http)
    {
        if (http.Request.Cookies[Name] is not { Length: > 0 } cookie) return null;
        try
        {
            return seal.Unprotect(cookie).Split(' ');
        }
        catch (CryptographicException)
        {
            return null; // forged, or of another plant
        }
    }
}
