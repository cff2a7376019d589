
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
        if (!http.Request.HasFormContentType) return Results.BadRequest();
        var form = await http.Request.ReadFormAsync(ct);
        var units = UnitPreference.FromCookie(string.Join('.', Fields.Select(name => form[name].ToString())));
        http.Response.Cookies.Append(UnitPreference.Cookie, units.ToCookie(), new CookieOptions
        {
            MaxAge = TimeSpan.FromDays(365),
            SameSite = SameSiteMode.Lax,
            HttpOnly = true,
            IsEssential = true,
        });
        return Results.LocalRedirect(Local(form["back"].ToString()));
    }

    private static string Local(string back) =>
        back.StartsWith('/') && !back.StartsWith("//", StringComparison.Ordinal) && !back.Contains('\\') ? back : "/";
}
