using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Keeps the language that was chosen and leads back to where it was: with the person who is signed in, else with the browser.
/// </summary>
/// <remarks>What a person chose on a shared tablet changes it for nobody else.</remarks>
internal static class LanguageChoice
{
    public static void MapLanguage(this IEndpointRouteBuilder app) =>
        // No token: what another site sends is refused before, and while nobody is set up a page has no token that holds.
        app.MapPost("/language", ChooseAsync).AllowAnonymous().DisableAntiforgery().ExcludeFromDescription();

    private static async Task<IResult> ChooseAsync(HttpContext http, PeopleDesk people, CancellationToken ct)
    {
        if (await SentForm.ReadAsync(http.Request, ct) is not { } form) return Results.BadRequest();
        if (Tongue.Of(form["language"].ToString()) is not { } chosen) return Results.BadRequest();
        if (http.User.PersonId() is { } person) await people.SpeakAsync(person, chosen.Code, ct);
        else Keep(http, chosen);
        return Results.LocalRedirect(LocalAddress.Of(form["back"].ToString()));
    }

    private static void Keep(HttpContext http, Tongue chosen) =>
        http.Response.Cookies.Append(LanguageOfRequest.Cookie, chosen.Code, new CookieOptions
        {
            MaxAge = TimeSpan.FromDays(365),
            SameSite = SameSiteMode.Lax,
            IsEssential = true,
        });
}
