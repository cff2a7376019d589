using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Signs people in; one who is switched off is not let in.</summary>
public sealed class PersonSignIn(
    UserManager<PersonRow> people, IHttpContextAccessor http, IUserClaimsPrincipalFactory<PersonRow> claims,
    IOptions<IdentityOptions> options,
    ILogger<SignInManager<PersonRow>> log, IAuthenticationSchemeProvider schemes, IUserConfirmation<PersonRow> confirmation,
    TimeProvider clock)
    : SignInManager<PersonRow>(people, http, claims, options, log, schemes, confirmation)
{
    private static readonly TimeSpan untouched = TimeSpan.FromMinutes(30);

    public override Task<bool> CanSignInAsync(PersonRow user) => Task.FromResult(!user.IsOff);

    /// <summary>
    /// Begins a person's session on a shared tablet. It ends by itself when nobody touches the tablet for a while (half an hour:
    /// common practice).
    /// </summary>
    public Task SwitchToAsync(PersonRow person, TabletRow tablet) => Context.SignInAsync(
        IdentityConstants.ApplicationScheme, Who.Of(person, IdentityConstants.ApplicationScheme, tablet.Id),
        new AuthenticationProperties
        {
            IssuedUtc = clock.GetUtcNow(),
            ExpiresUtc = clock.GetUtcNow() + untouched,
            AllowRefresh = true,
        });

    /// <summary>What the session of a person who signs in says.</summary>
    internal sealed class Claims : IUserClaimsPrincipalFactory<PersonRow>
    {
        public Task<ClaimsPrincipal> CreateAsync(PersonRow user) =>
            Task.FromResult(Who.Of(user, IdentityConstants.ApplicationScheme));
    }
}
