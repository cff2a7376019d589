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

    /// <summary>Changes made by another process are seen after this time.</summary>
    protected override TimeSpan RevalidationInterval => TimeSpan.FromMinutes(1);

    /// <summary>
    /// Asks again whenever somebody's rights change. Only a page that stays open does: one that is drawn once would lose its own
    /// answer by it.
    /// </summary>
    public void Listen()
    {
        news.Changed -= AskAgain;
        news.Changed += AskAgain;
    }

    protected override async Task<bool> ValidateAuthenticationStateAsync(
        AuthenticationState authenticationState, CancellationToken cancellationToken)
    {
        var session = authenticationState.User;
        return await standing.NowAsync(session, cancellationToken) is { } now
            && now.RoleNames().SequenceEqual(session.RoleNames());
    }

    protected override void Dispose(bool disposing)
    {
        news.Changed -= AskAgain;
        base.Dispose(disposing);
    }

    private void AskAgain() => _ = AskAgainAsync();

    private async Task AskAgainAsync()
    {
        var state = await GetAuthenticationStateAsync();
        if (state.User.Identity?.IsAuthenticated == true
            && !await ValidateAuthenticationStateAsync(state, CancellationToken.None))
            SetAuthenticationState(Task.FromResult(new AuthenticationState(new ClaimsPrincipal(new ClaimsIdentity()))));
    }
}
