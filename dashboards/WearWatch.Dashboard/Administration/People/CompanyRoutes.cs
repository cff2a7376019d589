using System.Globalization;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Options;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>What is answered on the ways to the company's OpenID provider and back.</summary>
internal static class CompanyRoutes
{
    private const string Connecting = "connect";

    public static void MapCompanySignIn(this IEndpointRouteBuilder app)
    {
        if (!app.ServiceProvider.GetRequiredService<IOptions<OpenIdOptions>>().Value.IsOn) return;
        var ways = app.MapGroup("").AllowAnonymous().ExcludeFromDescription();
        ways.MapGet(CompanyDoor.Go, GoAsync);
        ways.MapGet(CompanyDoor.Done, ComeInAsync);
        ways.MapGet(CompanyDoor.Leave, Leave);
        ways.MapPost(CompanyDoor.SignedOut, EndAsync).DisableAntiforgery().RequireRateLimiting(SignInLimit.Name);
    }

    /// <summary>Sets out to the provider.</summary>
    private static async Task GoAsync(HttpContext http, string? back, bool connect = false)
    {
        var asked = new AuthenticationProperties
        {
            RedirectUri = CompanyDoor.Done + "?back=" + Uri.EscapeDataString(connect ? "/people/me" : LocalAddress.Of(back)),
        };
        if (connect && http.User.TabletId() is null && http.User.PersonId() is { } person)
            asked.Items[Connecting] = person.ToString(CultureInfo.InvariantCulture);
        try
        {
            await http.ChallengeAsync(CompanySignIn.Scheme, asked);
        }
        catch (InvalidOperationException) // the provider's description of itself cannot be had
        {
            http.Response.Redirect(CompanyDoor.BackWith(CompanyDoor.Away));
        }
    }

    /// <summary>Comes back from the provider, who vouches for somebody.</summary>
    private static async Task<IResult> ComeInAsync(
        HttpContext http, CompanyDesk desk, PeopleDesk people, PersonSignIn signIn, CompanySessions sessions,
        CompanyTokens tokens, string? back)
    {
        var outside = await http.AuthenticateAsync(IdentityConstants.ExternalScheme);
        await http.SignOutAsync(IdentityConstants.ExternalScheme);
        if (!outside.Succeeded || tokens.Identify(outside.Principal.Claims) is not { } who)
            return Results.Redirect(CompanyDoor.BackWith(CompanyDoor.Failed));
        var (person, fault) = outside.Properties.Items.TryGetValue(Connecting, out var id)
            ? await ConnectAsync(http, desk, people, id, who)
            : await desk.LetInAsync(who);
        if (person is null) return Refused(fault!);
        var session = await signIn.ComeInAsync(person);
        var sid = outside.Principal.FindFirst("sid")?.Value ?? "";
        await sessions.KeepAsync(session, sid, tokens.Seal(
            outside.Properties.GetTokenValue("id_token"), outside.Properties.GetTokenValue("refresh_token")));
        return Results.Redirect(LocalAddress.Of(back));
    }

    private static async Task<(PersonRow?, Phrase?)> ConnectAsync(
        HttpContext http, CompanyDesk desk, PeopleDesk people, string? id, CompanyIdentity who)
    {
        // Whoever set out has to be the one who comes back.
        if (http.User.PersonId() is not { } here || here.ToString(CultureInfo.InvariantCulture) != id
            || await people.FindAsync(here) is not { } person) return (null, CompanyWords.Failed);
        return await desk.ConnectAsync(person, who) is { } fault ? (null, fault) : (person, null);
    }

    private static IResult Leave(HttpContext http, CompanyDoor door) =>
        Results.Redirect(door.TakeLeave(http) ?? "/people/sign-in");

    /// <summary>The provider says that it has ended a session.</summary>
    /// <remarks>OpenID Connect Back-Channel Logout 1.0, 2.5 to 2.8.</remarks>
    private static async Task<IResult> EndAsync(
        HttpContext http, CompanyTokens tokens, CompanySessions sessions, [FromForm(Name = "logout_token")] string? token)
    {
        if (await tokens.ReadLogoutAsync(token ?? "", http.RequestAborted) is not { } ended)
            return Results.Json(new { error = "invalid_request" }, statusCode: StatusCodes.Status400BadRequest);
        await sessions.EndAsync(ended.Issuer, ended.Subject, ended.Session, http.RequestAborted);
        return Results.Ok();
    }

    private static RazorComponentResult<DoorNotice> Refused(Phrase why) =>
        new(new { Heading = T["Not signed in"], Text = T[why] }) { StatusCode = StatusCodes.Status403Forbidden };
}
