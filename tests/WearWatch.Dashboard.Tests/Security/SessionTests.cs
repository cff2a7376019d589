using System.Net;
using System.Security.Claims;
using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>
/// A session ends on the server: a copy of its cookie and a page that is open end with it (OWASP ASVS 5, V7.4).
/// </summary>
public sealed class SessionTests : IAsyncLifetime
{
    private readonly MovedClock clock = new();
    private readonly DashboardHost host;
    private Caller ada = null!;

    public SessionTests() => host = new DashboardHost { Clock = clock };

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        ada = new Caller(host);
        await ada.SetUpAsync();
    }

    public async ValueTask DisposeAsync()
    {
        ada.Dispose();
        await host.DisposeAsync();
    }

    [Fact]
    public async Task A_copied_cookie_is_worth_nothing_after_signing_out()
    {
        using var caller = new Caller(host);
        var cookie = (await caller.SignInAsync("Ada")).Headers.GetValues("Set-Cookie")
            .First(c => c.StartsWith("wearwatch-person", StringComparison.Ordinal)).Split(';')[0];
        using var thief = host.CreateClient(new() { AllowAutoRedirect = false, HandleCookies = false });
        thief.DefaultRequestHeaders.Add("Cookie", cookie);
        Assert.Equal(HttpStatusCode.OK, (await thief.GetAsync("/api/v1/me", Ct)).StatusCode);
        await caller.SendFormAsync("/people/me", "sign-out");
        Assert.Equal(HttpStatusCode.Unauthorized, (await thief.GetAsync("/api/v1/me", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await ada.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }

    [Fact]
    public async Task Signing_out_everywhere_ends_every_device()
    {
        using var elsewhere = new Caller(host);
        await elsewhere.SignInAsync("Ada");
        await ada.SendFormAsync("/people/me", "sign-out-everywhere");
        foreach (var one in new[] { ada, elsewhere })
            Assert.Equal(HttpStatusCode.Unauthorized, (await one.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }

    [Fact]
    public async Task An_open_page_obeys_at_once_when_its_session_ends_elsewhere()
    {
        var session = await SessionAsync(tabletId: null);
        var standing = host.Get<Standing>();
        Assert.NotNull(await standing.NowAsync(session, isUse: true, Ct));
        var heard = 0;
        host.Get<PeopleNews>().Changed += () => heard++;
        await host.Get<SessionDesk>().EndAsync(session.SessionId()!);
        Assert.Equal(1, heard); // open pages of this process ask anew
        Assert.Null(await standing.NowAsync(session, isUse: true, Ct));
    }

    [Fact]
    public async Task On_a_shared_tablet_a_session_ends_half_an_hour_after_the_last_touch_even_if_its_page_stays_open()
    {
        await using (var db = await host.OpenAsync())
        {
            db.Tablets.Add(new TabletRow { Name = "Press line", MarkedBy = "Ada" });
            await db.SaveChangesAsync(Ct);
        }

        var session = await SessionAsync(tabletId: 1);
        var standing = host.Get<Standing>();
        for (var i = 0; i < 3; i++)
        {
            clock.MoveOn(TimeSpan.FromMinutes(20)); // somebody works on
            Assert.NotNull(await standing.NowAsync(session, isUse: true, Ct));
        }

        clock.MoveOn(TimeSpan.FromMinutes(20));
        Assert.NotNull(await standing.NowAsync(session, isUse: false, Ct)); // the page looks by itself
        clock.MoveOn(TimeSpan.FromMinutes(11));
        Assert.Null(await standing.NowAsync(session, isUse: false, Ct));
    }

    [Fact]
    public async Task No_session_outlives_thirty_days_however_much_it_is_used()
    {
        await using var db = await host.OpenAsync();
        var person = await db.People.SingleAsync(Ct);
        var session = await host.Get<SessionDesk>().BeginAsync(person, null, stays: true, "a browser");
        var who = Who.Of(person, "test", session);
        for (var day = 0; day < 29; day++)
        {
            clock.MoveOn(TimeSpan.FromDays(1));
            Assert.NotNull(await host.Get<Standing>().NowAsync(who, isUse: true, Ct));
        }

        clock.MoveOn(TimeSpan.FromDays(2));
        Assert.Null(await host.Get<Standing>().NowAsync(who, isUse: true, Ct));
    }

    [Fact]
    public async Task The_own_page_lists_the_devices_that_are_signed_in()
    {
        using var elsewhere = new Caller(host);
        elsewhere.Http.DefaultRequestHeaders.UserAgent.ParseAdd("Phone/7");
        await elsewhere.SignInAsync("Ada");
        Assert.Contains("Phone/7", await ada.Http.GetStringAsync("/people/me", Ct), StringComparison.Ordinal);
    }

    private async Task<ClaimsPrincipal> SessionAsync(int? tabletId)
    {
        await using var db = await host.OpenAsync();
        var person = await db.People.SingleAsync(Ct);
        return Who.Of(person, "test", await host.Get<SessionDesk>().BeginAsync(person, tabletId, stays: false, "a browser"));
    }
}
