using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Begins and ends sessions of people; one who is switched off is not let in.</summary>
public sealed class PersonSignIn(
    UserManager<PersonRow> people, IHttpContextAccessor http, IUserClaimsPrincipalFactory<PersonRow> claims,
    IOptions<IdentityOptions> options,
    ILogger<SignInManager<PersonRow>> log, IAuthenticationSchemeProvider schemes, IUserConfirmation<PersonRow> confirmation,
    SessionDesk sessions, CompanySessions company, DeviceCookie device)
    : SignInManager<PersonRow>(people, http, claims, options, log, schemes, confirmation)
{
    public override Task<bool> CanSignInAsync(PersonRow user) => Task.FromResult(!user.IsOff);

    /// <summary>Begins a person's session on a shared tablet.</summary>
    public Task SwitchToAsync(PersonRow person, TabletRow tablet) => BeginAsync(person, tablet.Id, new());

    /// <summary>Begins a person's session on a device of one's own; the framework calls it for every way in.</summary>
    public override async Task SignInWithClaimsAsync(
        PersonRow user, AuthenticationProperties? authenticationProperties, IEnumerable<Claim> additionalClaims)
    {
        device.Keep(Context, user);
        var session = await BeginAsync(user, tabletId: null, authenticationProperties ?? new());
        if (Context.User.SessionId() is { } before && Context.User.PersonId() == user.Id)
            await company.MoveAsync(before, session);
    }

    /// <summary>Begins the session of a person whom the company's provider has let in.</summary>
    public Task<SessionRow> ComeInAsync(PersonRow person)
    {
        device.Keep(Context, person);
        return BeginAsync(person, tabletId: null, new());
    }

    /// <summary>Ends the session here and on the server: a copy of the cookie is worth nothing then.</summary>
    public override async Task SignOutAsync()
    {
        if (Context.User.SessionId() is { } session) await sessions.EndAsync(session);
        await base.SignOutAsync();
    }

    private async Task<SessionRow> BeginAsync(PersonRow person, int? tabletId, AuthenticationProperties properties)
    {
        // Who signs in after somebody else ends that session: a copy of the cookie that is overwritten is worth nothing then.
        if (Context.User.SessionId() is { } before && Context.User.PersonId() != person.Id) await sessions.EndAsync(before);
        var browser = Context.Request.Headers.UserAgent.ToString();
        var session = await sessions.BeginAsync(person, tabletId, properties.IsPersistent, browser);
        await Context.SignInAsync(
            IdentityConstants.ApplicationScheme, Who.Of(person, IdentityConstants.ApplicationScheme, session), properties);
        return session;
    }
}
