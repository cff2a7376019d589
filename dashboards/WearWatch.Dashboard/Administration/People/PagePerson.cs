using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Who looks at an open page. A page lives long after the request that drew it, so it asks again, at once when somebody's rights
/// change.
/// </summary>
public sealed class PagePerson : RevalidatingServerAuthenticationStateProvider
{
    private readonly Standing standing;
    private readonly PeopleNews news;

    public PagePerson(ILoggerFactory log, Standing standing, PeopleNews news)
        : base(log) => (this.standing, this.news) = (standing, news);

    /// <summary>A page that nobody touches sees changes made by another process after this time.</summary>
    protected override TimeSpan RevalidationInterval => TimeSpan.FromSeconds(30);

    /// <summary>
    /// Asks again whenever somebody's rights change. Only a page that stays open does: one that is drawn once would lose its own
    /// answer by it.
    /// </summary>
    public void Listen()
    {
        news.Changed -= AskAgain;
        news.Changed += AskAgain;
    }

    /// <summary>Whether somebody who acts on an open page may still do so; signs the page out if not.</summary>
    public async Task<bool> MayGoOnAsync()
    {
        var state = await GetAuthenticationStateAsync();
        if (state.User.Identity?.IsAuthenticated != true || await StandsAsync(state.User, isUse: true, CancellationToken.None))
            return true;
        SignOut();
        return false;
    }

    protected override Task<bool> ValidateAuthenticationStateAsync(
        AuthenticationState authenticationState, CancellationToken cancellationToken) =>
        StandsAsync(authenticationState.User, isUse: false, cancellationToken);

    protected override void Dispose(bool disposing)
    {
        news.Changed -= AskAgain;
        base.Dispose(disposing);
    }

    private async Task<bool> StandsAsync(ClaimsPrincipal session, bool isUse, CancellationToken ct) =>
        await standing.NowAsync(session, isUse, ct) is { } now && now.RoleNames().SequenceEqual(session.RoleNames());

    private void AskAgain() => _ = AskAgainAsync();

    private async Task AskAgainAsync()
    {
        var state = await GetAuthenticationStateAsync();
        if (state.User.Identity?.IsAuthenticated == true
            && !await ValidateAuthenticationStateAsync(state, CancellationToken.None)) SignOut();
    }

    private void SignOut() =>
        SetAuthenticationState(Task.FromResult(new AuthenticationState(new ClaimsPrincipal(new ClaimsIdentity()))));
}
