using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>Every entry carries its maker, and nobody enters in another's name.</summary>
public sealed class EntryMakerTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private const string Reading = """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4"}""";
    private const string Oiling = """{"chain":"K-1","event":"oiling","counter_h_before":3200}""";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_reading_is_kept_under_the_name_of_the_one_who_is_signed_in()
    {
        var bea = plant.Technician;
        var id = (await bea.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct)).GetProperty("id").GetInt32();
        Assert.Equal(HttpStatusCode.Created, (await bea.TellAsync("/api/v1/readings", With(Reading, "maker_id", id), "k1")).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await bea.TellAsync("/api/v1/events", With(Oiling, "told_by", "Bea"), "k2")).StatusCode);
        await using var db = await plant.Host.OpenAsync();
        Assert.Equal("Bea", (await db.Readings.SingleAsync(r => r.Key == "k1", Ct)).ToldBy);
        Assert.Equal("Bea", (await db.Events.SingleAsync(e => e.Key == "k2", Ct)).ToldBy);
    }

    [Theory]
    [InlineData("/api/v1/readings", Reading, "told_by", "Ada")]
    [InlineData("/api/v1/readings", Reading, "maker_id", 1)]
    [InlineData("/api/v1/events", Oiling, "told_by", "Ada")]
    [InlineData("/api/v1/events", Oiling, "maker_id", 1)]
    public async Task An_entry_that_says_it_is_anothers_is_refused_and_nothing_is_stored(string path, string body, string field, object other)
    {
        var before = await CountAsync();
        await AssertRefusedAsync(await plant.Technician.TellAsync(path, With(body, field, other), "forged"), HttpStatusCode.Forbidden, "other_maker", "Nothing was stored");
        Assert.Equal(before, await CountAsync());
    }

    [Fact]
    public async Task An_entry_after_the_session_ended_is_answered_with_401_and_can_be_sent_again()
    {
        var bea = plant.Technician;
        await bea.SendFormAsync("/people/me", "sign-out");
        var before = await CountAsync();
        await AssertRefusedAsync(await bea.TellAsync("/api/v1/readings", Reading, "late"), HttpStatusCode.Unauthorized, "not_signed_in", "Sign in");
        Assert.Equal(before, await CountAsync());
        await bea.SignInAsync("Bea");
        Assert.Equal(HttpStatusCode.Created, (await bea.TellAsync("/api/v1/readings", Reading, "late")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await bea.TellAsync("/api/v1/readings", Reading, "late")).StatusCode);
        Assert.Equal(before + 1, await CountAsync());
    }

    [Fact]
    public async Task A_replayed_request_stores_nothing_whether_as_it_was_or_with_another_length()
    {
        var ada = plant.Administrator;
        Assert.Equal(HttpStatusCode.Created, (await ada.TellAsync("/api/v1/readings", Reading, "once")).StatusCode);
        var before = await CountAsync();
        Assert.Equal(HttpStatusCode.OK, (await ada.TellAsync("/api/v1/readings", Reading, "once")).StatusCode);
        var changed = await ada.TellAsync("/api/v1/readings", Reading.Replace("1231.4", "1240.4", StringComparison.Ordinal), "once");
        Assert.Equal(HttpStatusCode.Conflict, changed.StatusCode);
        Assert.Contains("used for something else", await changed.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.Equal(before, await CountAsync());
    }

    [Theory]
    [InlineData("/api/v1/readings", Reading)]
    [InlineData("/api/v1/events", Oiling)]
    public async Task A_person_who_only_reads_enters_nothing(string path, string body)
    {
        var before = await CountAsync();
        await AssertRefusedAsync(await plant.Reader.TellAsync(path, body, "no"), HttpStatusCode.Forbidden, "missing_role", "technician or planner or engineer");
        Assert.Equal(before, await CountAsync());
        Assert.Equal(HttpStatusCode.OK, (await plant.Reader.Http.GetAsync("/api/v1/chains/K-1/readings", Ct)).StatusCode);
    }

    [Fact]
    public async Task A_technician_neither_changes_cards_nor_takes_files_in()
    {
        var bea = plant.Technician;
        using var put = new HttpRequestMessage(HttpMethod.Put, "/api/v1/chains/K-1/card") { Content = JsonContent.Create(new { revision = 1, limit_pct = 9 }) };
        put.Headers.Add("Idempotency-Key", "card");
        await AssertRefusedAsync(await bea.Http.SendAsync(put, Ct), HttpStatusCode.Forbidden, "missing_role", "planner or engineer");
        using var files = new MultipartFormDataContent { { new StringContent("chain\nX"), "file", "chains.csv" } };
        await AssertRefusedAsync(await bea.Http.PostAsync("/api/v1/imports", files, Ct), HttpStatusCode.Forbidden, "missing_role", "planner or engineer");
        foreach (var page in new[] { "/import", "/chains/K-1/card", "/settings", "/plan/inputs", "/people" })
            Assert.Equal("/people/refused", (await bea.Http.GetAsync(page, Ct)).Headers.Location!.AbsolutePath);
        Assert.Contains("roles: technician", await bea.Http.GetStringAsync("/people/refused", Ct), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/v1/readings", Reading)]
    [InlineData("/api/v1/events", Oiling)]
    public async Task Another_plants_position_is_refused_and_says_which_plant(string path, string body)
    {
        var before = await CountAsync();
        var answer = await plant.Administrator.TellAsync(path, With(body, "plant", "Otherwhere mill"), "far");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Contains("plant 'Otherwhere mill'; here is 'Plant'", text, StringComparison.Ordinal);
        Assert.Equal(before, await CountAsync());
        Assert.Equal(HttpStatusCode.Created, (await plant.Administrator.TellAsync(path, With(body, "plant", "plant"), "near")).StatusCode);
    }

    private static string With(string body, string field, object value) =>
        body[..^1] + $",\"{field}\":{JsonSerializer.Serialize(value)}}}";

    private static async Task AssertRefusedAsync(HttpResponseMessage answer, HttpStatusCode status, string code, string told)
    {
        var text = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        var problem = JsonDocument.Parse(text).RootElement;
        Assert.Equal(code, problem.GetProperty("code").GetString());
        Assert.Contains(told, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    private async Task<int> CountAsync()
    {
        await using var db = await plant.Host.OpenAsync();
        return await db.Readings.CountAsync(Ct) + await db.Events.CountAsync(Ct);
    }
}
