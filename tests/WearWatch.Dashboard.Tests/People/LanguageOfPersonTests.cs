using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>The language belongs to the person, on every device; a browser in which nobody is signed in has its own.</summary>
public sealed class LanguageOfPersonTests : IAsyncLifetime
{
    private readonly DashboardHost plant = new();
    private Caller ada = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        ada = new Caller(plant);
        await ada.SetUpAsync();
    }

    public async ValueTask DisposeAsync()
    {
        ada.Dispose();
        await plant.DisposeAsync();
    }

    [Fact]
    public async Task What_a_person_chooses_is_spoken_on_every_device_and_to_nobody_else()
    {
        using var bea = await ada.AddAsync("Bea", 1);
        Assert.Equal(HttpStatusCode.Redirect, (await ChooseAsync(bea, "de")).StatusCode);
        await AssertSpeaksAsync(bea, "de");
        using var elsewhere = new Caller(plant);
        await elsewhere.SignInAsync("Bea");
        await AssertSpeaksAsync(elsewhere, "de");
        await AssertSpeaksAsync(ada, "en");
        await ChooseAsync(elsewhere, "es");
        await AssertSpeaksAsync(bea, "es");
    }

    [Fact]
    public async Task On_a_shared_tablet_each_has_their_own_and_leaves_it_as_it_was()
    {
        using var bea = await ada.AddAsync("Bea", 1);
        await bea.SendFormAsync("/people/me", "pin", ("Form.Password", Caller.Password), ("Form.Pin", "2580"),
            ("Form.Again", "2580"));
        await ChooseAsync(bea, "de");
        using var tablet = new Caller(plant);
        await tablet.SignInAsync("Ada");
        await tablet.SendFormAsync("/people/tablets", "mark", ("Form.Name", "Press line"));
        var id = (await bea.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct)).GetProperty("id").GetInt32();
        await tablet.SendFormAsync($"/people/switch?who={id}", "pin", ("Form.Who", $"{id}"), ("Form.Pin", "2580"));
        await AssertSpeaksAsync(tablet, "de");
        await tablet.SendFormAsync("/people/switch", "leave");
        Assert.Contains("Who works now?", await tablet.Http.GetStringAsync("/people/switch", Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_choice_that_another_sites_page_sends_changes_nothing()
    {
        using var post = new HttpRequestMessage(HttpMethod.Post, "/language")
        {
            Content = new FormUrlEncodedContent([new("language", "de")]),
        };
        post.Headers.Add("Origin", "https://elsewhere.example");
        var sent = await ada.Http.SendAsync(post, Ct);
        Assert.Equal(HttpStatusCode.Forbidden, sent.StatusCode);
        await AssertSpeaksAsync(ada, "en");
    }

    [Fact]
    public async Task Whoever_is_not_signed_in_is_answered_in_the_browsers_language_also_when_refused()
    {
        using var anyone = new Caller(plant);
        anyone.Http.DefaultRequestHeaders.Add("Cookie", "language=de");
        Assert.Contains("Anmelden", await anyone.Http.GetStringAsync("/people/sign-in", Ct), StringComparison.Ordinal);
        var refused = await anyone.Http.GetAsync("/api/v1/me", Ct);
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        Assert.Contains("Nicht angemeldet", await refused.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de", "Keine Kette")]
    [InlineData("xx, de-AT;q=0.8, en;q=0.5", "Keine Kette")]
    [InlineData("en;q=0.4, es;q=0.9", "Ninguna cadena")]
    [InlineData("de;q=0, en", "No chain")]
    [InlineData("xx", "No chain")]
    public async Task The_API_answers_a_program_in_the_language_that_it_asks_for(string asked, string answered)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/v1/chains/X");
        request.Headers.Add("Accept-Language", asked);
        var answer = await ada.Http.SendAsync(request, Ct);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        Assert.StartsWith(answered, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal("X", problem.GetProperty("figures")[0].GetString());
    }

    [Theory]
    [InlineData("de-AT, en;q=0.5", "de")]
    [InlineData("xx, es;q=0.8", "es")]
    [InlineData("xx", "en")]
    [InlineData("", "en")]
    public async Task A_browser_in_which_nothing_was_chosen_is_answered_in_its_own_language(string asked, string spoken)
    {
        using var anyone = new Caller(plant);
        if (asked.Length > 0) anyone.Http.DefaultRequestHeaders.Add("Accept-Language", asked);
        foreach (var page in new[] { "/people/sign-in", "/floor/" })
            Assert.Contains($"<html lang=\"{spoken}\"", await anyone.Http.GetStringAsync(page, Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_chosen_goes_before_what_the_browser_asks_for()
    {
        ada.Http.DefaultRequestHeaders.Add("Accept-Language", "de");
        await AssertSpeaksAsync(ada, "de");
        await ChooseAsync(ada, "es");
        await AssertSpeaksAsync(ada, "es");
    }

    [Fact]
    public async Task The_phone_tells_a_persons_choice_by_the_API()
    {
        using var put = new HttpRequestMessage(HttpMethod.Put, "/api/v1/me/language")
        {
            Content = new StringContent("""{"language":"de"}""", Encoding.UTF8, "application/json"),
        };
        put.Headers.Add("Idempotency-Key", "language");
        var answer = await ada.Http.SendAsync(put, Ct);
        Assert.Equal("de", (await answer.Content.ReadFromJsonAsync<JsonElement>(Ct)).GetProperty("language").GetString());
        await AssertSpeaksAsync(ada, "de");
    }

    private static async Task<HttpResponseMessage> ChooseAsync(Caller who, string language) =>
        await who.Http.PostAsync(
            "/language", new FormUrlEncodedContent([new("language", language), new("back", "/more")]), Ct);

    private static async Task AssertSpeaksAsync(Caller who, string language) =>
        Assert.Contains($"<html lang=\"{language}\"", await who.Http.GetStringAsync("/more", Ct), StringComparison.Ordinal);
}
