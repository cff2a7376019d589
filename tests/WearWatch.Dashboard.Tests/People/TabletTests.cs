using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Plant.Intake;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>Shared tablets: a quick switch by PIN, and what a PIN is not good for.</summary>
public sealed class TabletTests : IAsyncLifetime
{
    private const string Reading = """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4"}""";
    private const string Right = "2580";

    private readonly DashboardHost plant = new();
    private readonly MovedClock clock = new();
    private WebApplicationFactory<Program> host = null!;
    private Caller ada = null!;
    private Caller bea = null!;
    private Caller tablet = null!;
    private int beaId;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        host = plant.WithWebHostBuilder(b => b.ConfigureServices(s => s.AddSingleton<TimeProvider>(clock)));
        ada = new Caller(host);
        await ada.SetUpAsync();
        bea = await ada.AddAsync("Bea", 1);
        await SetPinAsync(bea, Right);
        beaId = (await MeAsync(bea)).GetProperty("id").GetInt32();
        tablet = await MarkAsync("Press line");
        await host.Services.GetRequiredService<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var caller in new[] { ada, bea, tablet }) caller.Dispose();
        await host.DisposeAsync();
        await plant.DisposeAsync();
    }

    [Fact]
    public async Task On_a_shared_tablet_one_taps_ones_name_types_the_PIN_and_enters_under_that_name()
    {
        var names = await tablet.Http.GetStringAsync("/people/switch", Ct);
        Assert.Contains("Bea", names, StringComparison.Ordinal);
        Assert.DoesNotContain("Ada", names, StringComparison.Ordinal); // has no PIN
        var answer = await TypeAsync(tablet, Right);
        Assert.EndsWith("/floor/", answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
        var me = await MeAsync(tablet);
        Assert.Equal("Bea", me.GetProperty("name").GetString());
        Assert.True(me.GetProperty("shared_tablet").GetBoolean());
        Assert.Equal(HttpStatusCode.Created, (await tablet.TellAsync("/api/v1/readings", Reading, "on the tablet")).StatusCode);
        await using var db = await OpenAsync();
        Assert.Equal("Bea", (await db.Readings.SingleAsync(r => r.Key == "on the tablet", Ct)).ToldBy);
    }

    [Fact]
    public async Task A_second_person_switches_with_two_taps_and_the_first_one_is_gone()
    {
        using var cem = await ada.AddAsync("Cem", 1);
        await SetPinAsync(cem, "7391");
        await TypeAsync(tablet, Right);
        var id = (await MeAsync(cem)).GetProperty("id").GetInt32();
        await tablet.SendFormAsync($"/people/switch?who={id}", "pin", ("Form.Who", $"{id}"), ("Form.Pin", "7391"));
        Assert.Equal("Cem", (await MeAsync(tablet)).GetProperty("name").GetString());
    }

    [Fact]
    public async Task A_PIN_counts_on_a_known_tablet_only_not_with_a_forged_mark_nor_after_the_mark_was_withdrawn()
    {
        using var elsewhere = new Caller(host);
        var token = await elsewhere.TokenOfAsync("/people/sign-in");
        async Task AssertNoTabletAsync(string sent)
        {
            await elsewhere.SendFormAsync(Page, "pin", sent, ("Form.Who", $"{beaId}"), ("Form.Pin", Right));
            Assert.Contains(PinWords.NoTablet.ToString(), await elsewhere.Http.GetStringAsync(Page, Ct),
                StringComparison.Ordinal);
            Assert.Equal(HttpStatusCode.Unauthorized, (await elsewhere.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        }

        await AssertNoTabletAsync(token);
        elsewhere.Http.DefaultRequestHeaders.Add("Cookie", TabletCookie.Name + "=1");
        await AssertNoTabletAsync(token);

        await TypeAsync(tablet, Right);
        Assert.Equal(HttpStatusCode.OK, (await tablet.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        await using (var db = await OpenAsync())
            await ada.SendFormAsync("/people/tablets", "withdraw", ("Gone.Id", $"{(await db.Tablets.SingleAsync(Ct)).Id}"));
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.TellAsync("/api/v1/readings", Reading, "withdrawn")).StatusCode);
        Assert.Contains(PinWords.NoTablet.ToString(), await tablet.Http.GetStringAsync(Page, Ct), StringComparison.Ordinal);
        await using (var db = await OpenAsync()) Assert.False(await db.Readings.AnyAsync(r => r.Key == "withdrawn", Ct));
    }

    [Fact]
    public async Task On_a_shared_tablet_nobody_administers_and_nobody_changes_password_or_PIN()
    {
        await SetPinAsync(ada, "7391");
        var id = (await MeAsync(ada)).GetProperty("id").GetInt32();
        await tablet.SendFormAsync($"/people/switch?who={id}", "pin", ("Form.Who", $"{id}"), ("Form.Pin", "7391"));
        Assert.DoesNotContain(
            "administrator", (await MeAsync(tablet)).GetProperty("roles").EnumerateArray().Select(r => r.GetString()));
        Assert.Equal("/people/refused", (await tablet.Http.GetAsync("/people", Ct)).Headers.Location!.AbsolutePath);
        var mine = await tablet.Http.GetStringAsync("/people/me", Ct);
        Assert.DoesNotContain("New PIN", mine, StringComparison.Ordinal);
        Assert.DoesNotContain("New password", mine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_session_on_a_tablet_that_nobody_touches_ends_after_half_an_hour_and_leads_back_to_the_names()
    {
        await TypeAsync(tablet, Right);
        clock.MoveOn(TimeSpan.FromMinutes(29));
        // touched: half an hour from now
        Assert.Equal(HttpStatusCode.OK, (await tablet.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        clock.MoveOn(TimeSpan.FromMinutes(29));
        Assert.Equal(HttpStatusCode.OK, (await tablet.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        clock.MoveOn(TimeSpan.FromMinutes(31));
        var late = await tablet.TellAsync("/api/v1/readings", Reading, "late");
        Assert.Equal(HttpStatusCode.Unauthorized, late.StatusCode);
        Assert.Contains("not_signed_in", await late.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        await using (var db = await OpenAsync()) Assert.False(await db.Readings.AnyAsync(r => r.Key == "late", Ct));
        var door = (await tablet.Http.GetAsync("/people/sign-in?back=%2Fchains", Ct)).Headers.Location!;
        Assert.EndsWith("/people/switch?back=%2Fchains", door.OriginalString, StringComparison.Ordinal);
        await TypeAsync(tablet, Right);
        Assert.Equal(HttpStatusCode.Created, (await tablet.TellAsync("/api/v1/readings", Reading, "late")).StatusCode);
    }

    [Fact]
    public async Task A_session_by_password_ends_by_itself_and_an_entry_after_it_stores_nothing()
    {
        clock.MoveOn(TimeSpan.FromDays(15));
        Assert.Equal(HttpStatusCode.Unauthorized, (await bea.TellAsync("/api/v1/readings", Reading, "fortnight")).StatusCode);
        await using var db = await OpenAsync();
        Assert.False(await db.Readings.AnyAsync(r => r.Key == "fortnight", Ct));
    }

    [Fact]
    public async Task Only_an_administrator_makes_a_browser_a_shared_tablet()
    {
        Assert.Equal("/people/refused", (await bea.Http.GetAsync("/people/tablets", Ct)).Headers.Location!.AbsolutePath);
        await bea.SendFormAsync("/people/tablets", "mark", await bea.TokenOfAsync("/people/me"), ("Form.Name", "Mine"));
        await using var db = await OpenAsync();
        Assert.Equal(["Press line"], await db.Tablets.Select(t => t.Name).ToListAsync(Ct));
    }

    private string Page => $"/people/switch?who={beaId}";

    private static Task<HttpResponseMessage> SetPinAsync(Caller who, string pin) =>
        who.SendFormAsync("/people/me", "pin", ("Form.Password", Caller.Password), ("Form.Pin", pin), ("Form.Again", pin));

    private static async Task<JsonElement> MeAsync(Caller who) => await who.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct);

    /// <summary>An administrator signs in on a browser, marks it, and is signed out there by that.</summary>
    private async Task<Caller> MarkAsync(string name)
    {
        var browser = new Caller(host);
        await browser.SignInAsync("Ada");
        await browser.SendFormAsync("/people/tablets", "mark", ("Form.Name", name));
        Assert.Equal(HttpStatusCode.Unauthorized, (await browser.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        return browser;
    }

    private Task<HttpResponseMessage> TypeAsync(Caller at, string pin) =>
        at.SendFormAsync(Page, "pin", ("Form.Who", $"{beaId}"), ("Form.Pin", pin));

    private Task<WearWatch.Storage.WearDb> OpenAsync() =>
        host.Services.GetRequiredService<IDbContextFactory<WearWatch.Storage.WearDb>>().CreateDbContextAsync(Ct);
}
