using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Tests.People;

public sealed class SignInTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();
    private Caller ada = null!;

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
    public async Task A_person_signs_in_by_name_and_goes_back_to_where_he_was()
    {
        using var caller = new Caller(host);
        var answer = await caller.SendFormAsync(
            "/people/sign-in?back=%2Fchains%3Fsearch%3DK", "sign-in", ("Form.Name", "ada"), ("Form.Password", Caller.Password));
        Assert.EndsWith("/chains?search=K", answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
        var me = await caller.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct);
        Assert.Equal("Ada", me.GetProperty("name").GetString());
        Assert.False(me.GetProperty("open_until_set_up").GetBoolean());
    }

    [Theory]
    [InlineData("Ada", "a wrong password")]
    [InlineData("Nobody at all", Caller.Password)]
    public async Task A_wrong_password_and_an_unknown_name_are_refused_with_the_same_words(string name, string password)
    {
        using var caller = new Caller(host);
        var text = await (await caller.SignInAsync(name, password)).Content.ReadAsStringAsync(Ct);
        Assert.Contains(SignInWords.Wrong.ToString(), text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, (await caller.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }

    [Fact]
    public async Task Five_wrong_passwords_make_even_the_right_one_wait_until_an_administrator_gives_a_new_one()
    {
        using var bea = await ada.AddAsync("Bea", 1);
        using var caller = new Caller(host);
        for (var i = 0; i < 5; i++) await caller.SignInAsync("Bea", "a wrong password");
        var text = await (await caller.SignInAsync("Bea")).Content.ReadAsStringAsync(Ct);
        Assert.Contains("Too many wrong tries. Wait", text, StringComparison.Ordinal);
        await ada.SendFormAsync(await PageOfAsync("Bea"), "reset", ("Reset.Password", "given once more"));
        Assert.Equal(HttpStatusCode.Found, (await caller.SignInAsync("Bea", "given once more")).StatusCode);
    }

    [Fact]
    public async Task Many_tries_from_one_address_have_to_wait_whatever_the_names()
    {
        using var caller = new Caller(host);
        var token = await caller.TokenOfAsync("/people/sign-in");
        // All at once, so that a slow machine does not stretch them over more than the minute that is counted.
        var answers = await Task.WhenAll(Enumerable.Range(0, 35).Select(i => caller.SendFormAsync(
            "/people/sign-in", "sign-in", token, ("Form.Name", $"Guess {i}"), ("Form.Password", "x"))));
        var refused = answers.Where(a => a.StatusCode == HttpStatusCode.TooManyRequests).ToList();
        Assert.NotEmpty(refused);
        Assert.Contains(SignInWords.TooMany.ToString(), await refused[0].Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await caller.Http.GetAsync("/people/sign-in", Ct)).StatusCode);
    }

    [Fact]
    public async Task A_first_password_lets_read_only_until_an_own_one_is_chosen()
    {
        await ada.SendFormAsync(
            "/people", "add", ("Form.Name", "Bea"), ("Form.Roles", "1"), ("Form.Password", "given by another"));
        using var bea = new Caller(host);
        var answer = await bea.SignInAsync("Bea", "given by another");
        Assert.EndsWith("/people/me", answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
        Assert.Empty((await bea.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct)).GetProperty("roles").EnumerateArray());
        await bea.SendFormAsync("/people/me", "password", ("Form.Old", "given by another"), ("Form.New", Caller.Password),
            ("Form.Again", Caller.Password));
        Assert.Equal(
            "technician", (await bea.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct)).GetProperty("roles")[0].GetString());
    }

    [Fact]
    public async Task A_changed_password_ends_every_other_session()
    {
        using var elsewhere = new Caller(host);
        await elsewhere.SignInAsync("Ada");
        var done = await (await ada.SendFormAsync(
            "/people/me", "password", ("Form.Old", Caller.Password), ("Form.New", "another dozen links"),
            ("Form.Again", "another dozen links")))
            .Content.ReadAsStringAsync(Ct);
        Assert.Contains("Changed. Every other device", done, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, (await elsewhere.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await ada.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }

    [Fact]
    public async Task A_role_that_is_taken_away_is_gone_with_the_next_request_and_a_person_who_is_switched_off_too()
    {
        using var bea = await ada.AddAsync("Bea", 3);
        Assert.Equal(HttpStatusCode.OK, (await bea.Http.GetAsync("/plan/inputs", Ct)).StatusCode);
        await ada.SendFormAsync(await PageOfAsync("Bea"), "roles", ("Given.Roles", "1"));
        Assert.Equal("/people/sign-in", (await bea.Http.GetAsync("/plan/inputs", Ct)).Headers.Location!.AbsolutePath);
        await bea.SignInAsync("Bea");
        Assert.Equal("/people/refused", (await bea.Http.GetAsync("/plan/inputs", Ct)).Headers.Location!.AbsolutePath);
        await ada.SendFormAsync(await PageOfAsync("Bea"), "switch");
        Assert.Equal(HttpStatusCode.Unauthorized, (await bea.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        Assert.Contains(
            SignInWords.Off.ToString(), await (await bea.SignInAsync("Bea")).Content.ReadAsStringAsync(Ct),
                StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_last_administrator_can_neither_be_switched_off_nor_lose_the_role()
    {
        foreach (var form in new[] { "switch", "roles" })
        {
            var text = await (await ada.SendFormAsync(await PageOfAsync("Ada"), form)).Content.ReadAsStringAsync(Ct);
            Assert.Contains("Somebody has to administer", text, StringComparison.Ordinal);
        }

        Assert.Equal(HttpStatusCode.OK, (await ada.Http.GetAsync("/people", Ct)).StatusCode);
    }

    [Fact]
    public async Task Signing_out_ends_the_session()
    {
        await ada.SendFormAsync("/people/me", "sign-out");
        Assert.Equal(HttpStatusCode.Unauthorized, (await ada.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }

    [Fact]
    public async Task A_session_outlives_a_restart()
    {
        var cookie = (await new Caller(host).SignInAsync("Ada")).Headers.GetValues("Set-Cookie")
            .First(c => c.StartsWith("wearwatch-person", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        await using var restarted = host.WithWebHostBuilder(b => b.UseSetting("WearWatch:Worker", "false"));
        using var later = restarted.CreateClient();
        later.DefaultRequestHeaders.Add("Cookie", cookie.Split(';')[0]);
        Assert.Equal("Ada", (await later.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct)).GetProperty("name").GetString());
    }

    [Fact]
    public async Task A_form_without_its_token_changes_nothing()
    {
        await ada.SendFormAsync(
            "/people", "add", "", ("Form.Name", "Mallory"), ("Form.Roles", "8"), ("Form.Password", "given by another"));
        await using var db = await host.OpenAsync();
        Assert.Equal(["Ada"], await db.People.Select(p => p.UserName).ToListAsync(Ct));
    }

    private async Task<string> PageOfAsync(string name)
    {
        await using var db = await host.OpenAsync();
        return $"/people/{await db.People.Where(p => p.UserName == name).Select(p => p.Id).SingleAsync(Ct)}";
    }
}
