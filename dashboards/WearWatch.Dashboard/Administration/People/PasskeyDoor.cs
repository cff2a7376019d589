using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Where a page's script fetches what the browser makes or finds a passkey by.</summary>
public static class PasskeyDoor
{
    /// <summary>For a new passkey of whoever is signed in.</summary>
    public const string New = "/people/passkeys/new";

    /// <summary>For signing in by a passkey.</summary>
    public const string Use = "/people/passkeys/use";

    internal static void MapPasskeys(this IEndpointRouteBuilder app)
    {
        // The framework's own check would answer a missing token with a broken page; a script reads a problem.
        var doors = app.MapGroup("").DisableAntiforgery().AddEndpointFilter(AskForTokenAsync)
            .RequireRateLimiting(SignInLimit.Name).ExcludeFromDescription();
        doors.MapPost(New, OfferAsync);
        doors.MapPost(Use, UseAsync).AllowAnonymous();
    }

    private static async ValueTask<object?> AskForTokenAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next) =>
        await call.HttpContext.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(call.HttpContext)
            ? await next(call)
            : Results.Problem(statusCode: 400, detail: T["This page is too old. Load it anew and try again."]);

    private static async Task<IResult> OfferAsync(
        HttpContext http, PeopleDesk people, PersonPasskeys passkeys, [FromForm(Name = "Form.Password")] string? password)
    {
        var person = http.User.TabletId() is null && http.User.PersonId() is { } id ? await people.FindAsync(id) : null;
        if (person is null) return Results.Problem(
            statusCode: 403, detail: T["A passkey is made on a device of one's own, by whoever is signed in there."]);
        var (question, fault) = await passkeys.OfferAsync(person, password ?? "");
        return question is null
            ? Results.Problem(statusCode: 400, detail: T[fault!])
            : Results.Content(question, "application/json");
    }

    private static async Task<IResult> UseAsync(PersonSignIn signIn) =>
        Results.Content(await signIn.MakePasskeyRequestOptionsAsync(null), "application/json");
}
