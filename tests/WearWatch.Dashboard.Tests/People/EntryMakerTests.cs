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
    private const string Look = """{"chain":"K-1","findings":[{"point":"dry_joints","found":true,"note":""}]}""";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_reading_is_kept_under_the_name_of_the_one_who_is_signed_in()
    {
        var bea = plant.Technician;
        var id = (await bea.Http.GetFromJsonAsync<JsonElement>("/api/v1/me", Ct)).GetProperty("id").GetInt32();
        Assert.Equal(
            HttpStatusCode.Created, (await bea.TellAsync("/api/v1/readings", With(Reading, "maker_id", id), "k1")).StatusCode);
        Assert.Equal(
            HttpStatusCode.Created, (await bea.TellAsync("/api/v1/events", With(Oiling, "told_by", "Bea"), "k2")).StatusCode);
        await using var db = await plant.Host.OpenAsync();
        Assert.Equal("Bea", (await db.Readings.SingleAsync(r => r.Key == "k1", Ct)).ToldBy);
        Assert.Equal("Bea", (await db.Events.SingleAsync(e => e.Key == "k2", Ct)).ToldBy);
    }

    [Theory]
    [InlineData("/api/v1/readings", Reading, "told_by", "Ada")]
    [InlineData("/api/v1/readings", Reading, "maker_id", 1)]
    [InlineData("/api/v1/events", Oiling, "told_by", "Ada")]
    [InlineData("/api/v1/events", Oiling, "maker_id", 1)]
    [InlineData("/api/v1/inspections", Look, "told_by", "Ada")]
    [InlineData("/api/v1/inspections", Look, "maker_id", 1)]
    public async Task An_entry_that_says_it_is_anothers_is_refused_and_nothing_is_stored(
        string path, string body, string field, object other)
    {
        var before = await CountAsync();
        await AssertRefusedAsync(await plant.Technician.TellAsync(path, With(body, field, other), "forged"),
            HttpStatusCode.Forbidden, "other_maker", "Nothing was stored");
        Assert.Equal(before, await CountAsync());
    }

    [Fact]
    public async Task An_entry_after_the_session_ended_is_answered_with_401_and_can_be_sent_again()
    {
        var bea = plant.Technician;
        await bea.SendFormAsync("/people/me", "sign-out");
        var before = await CountAsync();
        await AssertRefusedAsync(
            await bea.TellAsync("/api/v1/readings", Reading, "late"), HttpStatusCode.Unauthorized, "not_signed_in", "Sign in");
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
        var changed =
            await ada.TellAsync("/api/v1/readings", Reading.Replace("1231.4", "1240.4", StringComparison.Ordinal), "once");
        Assert.Equal(HttpStatusCode.Conflict, changed.StatusCode);
        Assert.Contains("used for something else", await changed.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.Equal(before, await CountAsync());
    }

    [Theory]
    [InlineData("/api/v1/readings", Reading)]
    [InlineData("/api/v1/events", Oiling)]
    [InlineData("/api/v1/inspections", Look)]
    public async Task A_person_who_only_reads_enters_nothing(string path, string body)
    {
        var before = await CountAsync();
        await AssertRefusedAsync(await plant.Reader.TellAsync(path, body, "no"), HttpStatusCode.Forbidden, "missing_role",
            "technician, planner, engineer");
        Assert.Equal(before, await CountAsync());
        Assert.Equal(HttpStatusCode.OK, (await plant.Reader.Http.GetAsync("/api/v1/chains/K-1/readings", Ct)).StatusCode);
    }

    [Fact]
    public async Task A_look_and_its_photo_are_kept_under_the_name_of_the_one_who_is_signed_in_and_of_nobody_else()
    {
        Assert.Equal(HttpStatusCode.Created, (await plant.Technician.TellAsync("/api/v1/inspections", Look, "seen")).StatusCode);
        await AssertRefusedAsync(
            await PhotoAsync(plant.Reader, ""), HttpStatusCode.Forbidden, "missing_role", "technician, planner, engineer");
        await AssertRefusedAsync(
            await PhotoAsync(plant.Technician, "?by=Ada"), HttpStatusCode.Forbidden, "other_maker", "Nothing was stored");
        await using var db = await plant.Host.OpenAsync();
        Assert.False(await db.Photos.AnyAsync(Ct));
        Assert.Equal(HttpStatusCode.Created, (await PhotoAsync(plant.Technician, "")).StatusCode);
        Assert.Equal("Bea", (await db.Looks.SingleAsync(l => l.Key == "seen", Ct)).ToldBy);
        Assert.Equal("Bea", (await db.Photos.SingleAsync(Ct)).ToldBy);
    }

    [Fact]
    public async Task Only_who_may_is_offered_to_take_a_round_and_to_set_the_order_of_walking()
    {
        const string Take = ">Take it</button>";
        const string Earlier = "Walk this line earlier";
        var read = await plant.Reader.Http.GetStringAsync("/rounds", Ct);
        Assert.Contains("nobody has it", read, StringComparison.Ordinal);
        Assert.DoesNotContain(Take, read, StringComparison.Ordinal);
        Assert.DoesNotContain(Earlier, read, StringComparison.Ordinal);
        var done = await plant.Technician.Http.GetStringAsync("/rounds", Ct);
        Assert.Contains(Take, done, StringComparison.Ordinal);
        Assert.DoesNotContain(Earlier, done, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_technician_neither_changes_cards_nor_takes_files_in()
    {
        var bea = plant.Technician;
        using var put = new HttpRequestMessage(
            HttpMethod.Put, "/api/v1/chains/K-1/master-data")
        { Content = JsonContent.Create(new { revision = 1, limit_pct = 9 }) };
        put.Headers.Add("Idempotency-Key", "card");
        await AssertRefusedAsync(
            await bea.Http.SendAsync(put, Ct), HttpStatusCode.Forbidden, "missing_role", "planner, engineer");
        using var files = new MultipartFormDataContent { { new StringContent("chain\nX"), "file", "chains.csv" } };
        await AssertRefusedAsync(await bea.Http.PostAsync("/api/v1/imports", files, Ct), HttpStatusCode.Forbidden, "missing_role",
            "planner, engineer");
        foreach (var page in new[] { "/import", "/chains/K-1/master-data", "/settings", "/plan/inputs", "/people" })
            Assert.Equal("/people/refused", (await bea.Http.GetAsync(page, Ct)).Headers.Location!.AbsolutePath);
        Assert.Contains("roles: technician", await bea.Http.GetStringAsync("/people/refused", Ct), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/v1/readings", Reading)]
    [InlineData("/api/v1/events", Oiling)]
    [InlineData("/api/v1/inspections", Look)]
    public async Task Another_plants_position_is_refused_and_says_which_plant(string path, string body)
    {
        var before = await CountAsync();
        var answer = await plant.Administrator.TellAsync(path, With(body, "plant", "Otherwhere mill"), "far");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Contains("plant 'Otherwhere mill'; here is 'Plant'", text, StringComparison.Ordinal);
        Assert.Equal(before, await CountAsync());
        Assert.Equal(HttpStatusCode.Created,
            (await plant.Administrator.TellAsync(path, With(body, "plant", "plant"), "near " + path)).StatusCode);
    }

    private static Task<HttpResponseMessage> PhotoAsync(Caller who, string query)
    {
        // The smallest file that is a picture by its segments: start, a frame of 8 x 8, a scan, end.
        byte[] jpeg = [0xFF, 0xD8, 0xFF, 0xC0, 0, 11, 8, 0, 8, 0, 8, 1, 1, 0x11, 0, 0xFF, 0xDA, 0, 4, 1, 1, 7, 0xFF, 0xD9];
        var request = new HttpRequestMessage(
            HttpMethod.Post, "/api/v1/inspections/seen/photos/dry_joints" + query)
        { Content = new ByteArrayContent(jpeg) };
        request.Content.Headers.ContentType = new("image/jpeg");
        request.Headers.Add("Idempotency-Key", "photo");
        return who.Http.SendAsync(request, Ct);
    }

    private static string With(string body, string field, object value) =>
        body[..^1] + $",\"{field}\":{JsonSerializer.Serialize(value)}}}";

    private static async Task AssertRefusedAsync(HttpResponseMessage answer, HttpStatusCode status, string code, string told)
    {
        var text = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        var problem = JsonDocument.Parse(text).RootElement;
        Assert.Equal(code, problem.GetProperty("kind").GetString());
        Assert.Contains(told, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    private async Task<int> CountAsync()
    {
        await using var db = await plant.Host.OpenAsync();
        return await db.Readings.CountAsync(Ct) + await db.Events.CountAsync(Ct) + await db.Looks.CountAsync(Ct) + await db.Photos
            .CountAsync(Ct);
    }
}
