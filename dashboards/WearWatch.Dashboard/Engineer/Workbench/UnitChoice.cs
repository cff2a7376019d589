using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.Words;

namespace WearWatch.Dashboard.Engineer.Workbench;

/// <summary>Remembers a person's units in this browser and leads back to where they were chosen.</summary>
internal static class UnitChoice
{
    private static readonly string[] Fields = ["length", "power", "speed", "temperature"];

    public static void MapUnits(this IEndpointRouteBuilder app) =>
        app.MapPost("/units", Choose).DisableAntiforgery().ExcludeFromDescription();

    // A preference is all that a foreign page could change here, so it needs no token.
    private static async Task<IResult> Choose(HttpContext http, CancellationToken ct)
    {
        if (await SentForm.ReadAsync(http.Request, ct) is not { } form) return Results.BadRequest();
        var units = UnitPreference.FromCookie(string.Join('.', Fields.Select(name => form[name].ToString())));
        http.Response.Cookies.Append(UnitPreference.Cookie, units.ToCookie(), new CookieOptions
        {
            MaxAge = TimeSpan.FromDays(365),
            SameSite = SameSiteMode.Lax,
            HttpOnly = true,
            IsEssential = true,
        });
        return Results.LocalRedirect(LocalAddress.Of(form["back"]));
    }
}
