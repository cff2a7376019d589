using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Intake;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>How a PIN is guarded: guesses, locks, and how it is set.</summary>
public sealed class PinTests : IAsyncLifetime
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
    public async Task A_wrong_PIN_is_refused_and_five_lock_even_the_right_one_out_for_five_minutes()
    {
        for (var i = 1; i < Pin.MissesForAWhile; i++)
            Assert.Contains(PinWords.Wrong.ToString(), await TypedAsync("0000"), StringComparison.Ordinal);
        Assert.Contains("wait for five minutes", await TypedAsync("0000"), StringComparison.Ordinal);
        Assert.Contains("wait for five minutes", await TypedAsync(Right), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, (await tablet.TellAsync("/api/v1/readings", Reading, "locked")).StatusCode);
        await using (var db = await OpenAsync()) Assert.False(await db.Readings.AnyAsync(r => r.Key == "locked", Ct));
        clock.MoveOn(Pin.Locked);
        Assert.Equal(HttpStatusCode.Found, (await TypeAsync(tablet, Right)).StatusCode);
        await using (var db = await OpenAsync()) Assert.Equal(0, (await db.People.SingleAsync(p => p.Id == beaId, Ct)).PinMisses);
    }

    [Fact]
    public async Task Many_wrong_PINs_at_once_are_no_way_around_the_count()
    {
        var token = await tablet.TokenOfAsync(Page);
        var answers = await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => tablet.SendFormAsync(
            Page, "pin", token, ("Form.Who", $"{beaId}"), ("Form.Pin", "0000"))));
        var told = await Task.WhenAll(answers.Select(a => a.Content.ReadAsStringAsync(Ct)));
        Assert.InRange(told.Count(t => t.Contains(PinWords.Wrong.ToString(), StringComparison.Ordinal)), 0,
            Pin.MissesForAWhile - 1);
        await using var db = await OpenAsync();
        Assert.Equal(Pin.MissesForAWhile, (await db.People.SingleAsync(p => p.Id == beaId, Ct)).PinMisses);
    }

    [Fact]
    public async Task A_PIN_that_was_wrong_fifty_times_is_taken_away()
    {
        var pins = host.Services.CreateScope().ServiceProvider.GetRequiredService<PinDesk>();
        var here = Assert.Single(await host.Services.GetRequiredService<TabletDesk>().AskAsync(Ct));
        for (var i = 1; i < Pin.MissesForEver; i++)
        {
            Assert.NotEqual(PinWords.TakenAway, (await pins.TryAsync(here, beaId, "0000", Ct)).Fault);
            if (i % Pin.MissesForAWhile == 0) clock.MoveOn(Pin.Locked);
        }

        Assert.Equal(PinWords.TakenAway, (await pins.TryAsync(here, beaId, "0000", Ct)).Fault);
        clock.MoveOn(Pin.Locked);
        Assert.Equal(PinWords.NoPin, (await pins.TryAsync(here, beaId, Right, Ct)).Fault);
    }

    [Theory]
    [InlineData("123", "4 to 8 digits")]
    [InlineData("258a", "digits only")]
    [InlineData("1111", "neither repeat")]
    [InlineData("4321", "neither repeat")]
    public async Task A_PIN_that_is_guessed_first_is_refused(string pin, string told)
    {
        var text = await (await SetPinAsync(bea, pin)).Content.ReadAsStringAsync(Ct);
        Assert.Contains(told, text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await TypeAsync(tablet, Right)).StatusCode);
    }

    [Fact]
    public async Task A_PIN_is_set_with_the_present_password_only_and_kept_as_a_hash()
    {
        var text = await (await bea.SendFormAsync(
            "/people/me", "pin", ("Form.Password", "a wrong password"), ("Form.Pin", "7391"), ("Form.Again", "7391"))).Content
                .ReadAsStringAsync(Ct);
        Assert.Contains("present password is not right", text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await TypeAsync(tablet, Right)).StatusCode);
        var done = await (await SetPinAsync(bea, "7391")).Content.ReadAsStringAsync(Ct);
        Assert.Contains("Set. Every other device", done, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await bea.Http.GetAsync("/api/v1/me", Ct)).StatusCode); // the setting itself goes on
        await using var db = await OpenAsync();
        Assert.DoesNotContain("7391", (await db.People.SingleAsync(p => p.Id == beaId, Ct)).PinHash, StringComparison.Ordinal);
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

    private async Task<string> TypedAsync(string pin) =>
        WebUtility.HtmlDecode(await (await TypeAsync(tablet, pin)).Content.ReadAsStringAsync(Ct));

    private Task<WearWatch.Storage.WearDb> OpenAsync() =>
        host.Services.GetRequiredService<IDbContextFactory<WearWatch.Storage.WearDb>>().CreateDbContextAsync(Ct);
}
