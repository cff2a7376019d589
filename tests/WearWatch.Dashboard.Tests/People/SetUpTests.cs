using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.People;

public sealed class SetUpTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task An_open_plant_invites_to_set_the_administrator_up_and_tells_programs_that_it_is_open()
    {
        using var caller = new Caller(host);
        Assert.Contains("Open to this machine only", await caller.Http.GetStringAsync("/", Ct), StringComparison.Ordinal);
        var me = await caller.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct);
        Assert.True(me.GetProperty("open_until_set_up").GetBoolean());
        Assert.Equal(JsonValueKind.Null, me.GetProperty("id").ValueKind);
        Assert.Equal(4, me.GetProperty("roles").GetArrayLength());
    }

    [Fact]
    public async Task After_the_set_up_a_page_leads_to_the_sign_in_and_the_api_answers_401()
    {
        using var ada = new Caller(host);
        Assert.Equal(HttpStatusCode.Found, (await ada.SetUpAsync()).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await ada.Http.GetAsync("/settings", Ct)).StatusCode);
        using var stranger = new Caller(host);
        var page = await stranger.Http.GetAsync("/chains?search=K", Ct);
        Assert.Equal("/people/sign-in?back=%2Fchains%3Fsearch%3DK", page.Headers.Location!.PathAndQuery);
        var api = await stranger.Http.GetAsync("/api/v1/chains", Ct);
        Assert.Equal(HttpStatusCode.Unauthorized, api.StatusCode);
        Assert.Equal("application/problem+json", api.Content.Headers.ContentType!.MediaType);
        foreach (var open in new[] { "/health", "/app.css", "/people/sign-in" })
            Assert.Equal(HttpStatusCode.OK, (await stranger.Http.GetAsync(open, Ct)).StatusCode);
    }

    [Fact]
    public async Task Nothing_of_the_plant_is_told_to_a_stranger()
    {
        using var ada = new Caller(host);
        await ada.SetUpAsync();
        using var stranger = new Caller(host);
        foreach (var path in new[]
        {
            "/openapi/v1.json",
            "/plan/swaps.csv",
            "/engineering/lives.csv",
            "/api/v1/nowhere",
            "/_blazor/negotiate",
        })
            Assert.True(
                (await stranger.Http.GetAsync(path, Ct)).StatusCode is HttpStatusCode.Found or HttpStatusCode.Unauthorized, path);
    }

    [Theory]
    [InlineData("/", "The administrator is not set up yet")]
    [InlineData("/api/v1/chains", "not_set_up")]
    public async Task Before_the_set_up_a_request_from_elsewhere_is_refused_and_told_how(string path, string told)
    {
        await using var far =
            host.WithWebHostBuilder(b => b.ConfigureServices(s => s.AddSingleton<IStartupFilter>(new FromElsewhere())));
        var answer = await far.CreateClient().GetAsync(path, Ct);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains(told, await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_proxy_on_this_machine_does_not_make_everybody_near()
    {
        using var caller = new Caller(host);
        caller.Http.DefaultRequestHeaders.Add("X-Forwarded-For", "192.0.2.7");
        Assert.Equal(HttpStatusCode.Forbidden, (await caller.Http.GetAsync("/", Ct)).StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("ABCD-EFGH-JKLM")]
    public async Task Without_the_code_of_the_console_nobody_is_set_up(string code)
    {
        using var caller = new Caller(host);
        var answer = await caller.SendFormAsync(
            "/people/first", "first", ("Form.Code", code), ("Form.Name", "Mallory"), ("Form.Password", Caller.Password),
            ("Form.Again", Caller.Password));
        Assert.Contains("not the code of the console", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.False(await host.Get<SetUp>().IsDoneAsync(Ct));
    }

    [Fact]
    public async Task With_the_code_the_administrator_is_set_up_from_elsewhere_too()
    {
        await using var far =
            host.WithWebHostBuilder(b => b.ConfigureServices(s => s.AddSingleton<IStartupFilter>(new FromElsewhere())));
        using var caller = new Caller(far);
        Assert.Equal(HttpStatusCode.Found, (await caller.SetUpAsync()).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await caller.Http.GetAsync("/settings", Ct)).StatusCode);
    }

    [Fact]
    public async Task Of_two_who_set_up_at_the_same_time_one_is_let_in()
    {
        Caller[] racers = [.. Enumerable.Range(0, 4).Select(_ => new Caller(host))];
        var tokens = await Task.WhenAll(racers.Select(r => r.TokenOfAsync("/people/first")));
        var answers = await Task.WhenAll(racers.Select((racer, i) => racer.SendFormAsync(
            "/people/first", "first", tokens[i], ("Form.Code", racer.Code), ("Form.Name", $"Racer {i}"),
            ("Form.Password", Caller.Password), ("Form.Again", Caller.Password))));
        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.Found);
        await using var db = await host.OpenAsync();
        Assert.Equal(RoleWords.All, (await db.People.SingleAsync(Ct)).Roles);
        foreach (var racer in racers) racer.Dispose();
    }

    [Fact]
    public async Task The_database_itself_lets_only_one_first_person_in()
    {
        using var caller = new Caller(host);
        await caller.SetUpAsync();
        await using var db = await host.OpenAsync();
        db.People.Add(new PersonRow { UserName = "Second", NormalizedUserName = "SECOND", IsFirst = true });
        await Assert.ThrowsAsync<DbUpdateException>(() => db.SaveChangesAsync(Ct));
    }

    [Theory]
    [InlineData("Ada", "short", "10 characters or more.")]
    [InlineData("Ada <b>", "twelve links of chain", "letters, digits")]
    [InlineData("", "twelve links of chain", "Give a name")]
    public async Task A_name_or_password_that_will_not_do_is_told_and_nobody_is_set_up(string name, string password, string told)
    {
        using var caller = new Caller(host);
        var answer = await caller.SendFormAsync(
            "/people/first", "first", ("Form.Code", caller.Code), ("Form.Name", name), ("Form.Password", password),
            ("Form.Again", password));
        Assert.Contains(told, await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.False(await host.Get<SetUp>().IsDoneAsync(Ct));
    }

    private sealed class FromElsewhere : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((http, go) =>
            {
                http.Connection.RemoteIpAddress = IPAddress.Parse("192.0.2.7"); // an address of documents, RFC 5737
                return go(http);
            });
            next(app);
        };
    }
}
