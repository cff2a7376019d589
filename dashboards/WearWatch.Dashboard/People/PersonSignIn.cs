using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.People;

/// <summary>Signs people in; one who is switched off is not let in, whether by password or passkey.</summary>
public sealed class PersonSignIn(
    UserManager<PersonRow> people, IHttpContextAccessor http, IUserClaimsPrincipalFactory<PersonRow> claims, IOptions<IdentityOptions> options,
    ILogger<SignInManager<PersonRow>> log, IAuthenticationSchemeProvider schemes, IUserConfirmation<PersonRow> confirmation)
    : SignInManager<PersonRow>(people, http, claims, options, log, schemes, confirmation)
{
    public override Task<bool> CanSignInAsync(PersonRow user) => Task.FromResult(!user.IsOff);

    /// <summary>What the session of a person who signs in says.</summary>
    internal sealed class Claims : IUserClaimsPrincipalFactory<PersonRow>
    {
        public Task<ClaimsPrincipal> CreateAsync(PersonRow user) => Task.FromResult(Who.Of(user, IdentityConstants.ApplicationScheme));
    }
}
