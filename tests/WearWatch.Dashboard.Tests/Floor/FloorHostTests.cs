using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Floor;

public sealed class FloorHostTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Theory]
    [InlineData("/floor/")]
    [InlineData("/floor/at/ABCD2345/7")]
    public async Task The_floor_is_one_document_under_a_policy_without_inline_code(string path)
    {
        var answer = await host.CreateClient().GetAsync(path, Ct);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        var text = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("nonce", policy, StringComparison.Ordinal);
        Assert.Matches("data-build=\"[0-9a-f]{16}\"", text);
        Assert.DoesNotContain("blazor", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Every_file_that_a_phone_keeps_is_served()
    {
        using var client = host.CreateClient();
        var files = (await client.GetFromJsonAsync<JsonElement>("/floor/files", Ct)).GetProperty("files").EnumerateArray()
            .Select(f => f.GetString()!).ToList();
        Assert.Contains("/floor/floor.js", files);
        Assert.Contains("/floor/floor.css", files);
        Assert.DoesNotContain("/floor/sw.js", files);
        foreach (var file in files) Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(file, Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/floor/sw.js", Ct)).StatusCode);
    }

    [Fact]
    public async Task The_pack_holds_what_the_phone_needs_and_a_mark_that_stays()
    {
        using var client = await FilledAsync();
        var pack = await client.GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        var again = await client.GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        var mark = pack.GetProperty("plant").GetProperty("mark").GetString()!;
        Assert.Matches("^[2-9A-HJ-NP-Z]{8}$", mark);
        Assert.Equal(mark, again.GetProperty("plant").GetProperty("mark").GetString());
        var measured = Chain(pack, "K-1");
        Assert.Equal(48, measured.GetProperty("last").GetProperty("pitches").GetInt32());
        Assert.Equal(2800, measured.GetProperty("last_counter_h").GetDouble());
        // 1229.5 mm over 48 pitches of 25.4 mm: 100 (1229.5 - 1219.2)/1219.2.
        Assert.Equal(0.8448, measured.GetProperty("last").GetProperty("elongation_pct").GetDouble(), 4);
        Assert.True(measured.GetProperty("expected").GetProperty("rate_pct_per_1000h").GetDouble() > 0);
        Assert.Equal(JsonValueKind.Null, Chain(pack, "K-2").GetProperty("last").ValueKind);
        Assert.True(pack.GetProperty("cautions").TryGetProperty(measured.GetProperty("caution").GetString()!, out _));
        Assert.True(pack.GetProperty("guides").TryGetProperty(measured.GetProperty("family").GetString()!, out _));
    }

    [Theory]
    [InlineData("en", "Stop, isolate, lock and tag", "not measured yet")]
    [InlineData("de", "gegen Wiedereinschalten sichern", "noch nicht gemessen")]
    [InlineData("es", "bloquear y etiquetar (LOTO)", "aún no medida")]
    public async Task The_pack_says_its_cautions_and_reasons_in_the_language_of_the_phone(
        string language, string caution, string reason)
    {
        using var client = await FilledAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/v1/floor/pack");
        request.Headers.Add("Cookie", $"language={language}");
        using var answer = await client.SendAsync(request, Ct);
        var pack = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        var chain = Chain(pack, "K-2");
        Assert.Contains(pack.GetProperty("cautions").GetProperty(chain.GetProperty("caution").GetString()!).EnumerateArray(),
            c => c.GetString()!.Contains(caution, StringComparison.Ordinal));
        Assert.Contains(chain.GetProperty("tasks").EnumerateArray(), t => t.GetProperty("why").GetString() == reason);
    }

    [Fact]
    public async Task The_last_counter_is_that_after_a_change_of_the_counter()
    {
        using var client = await FilledAsync();
        await host.Get<IntakeDesk>().TakeEventAsync(new NewEvent
        {
            Key = "change",
            Told = new ChainEvent
            {
                Chain = "K-1",
                Kind = WearWatch.Chains.ChainEventKind.MeterReset,
                At = new DateTimeOffset(2026, 5, 1, 0, 0, 0, TimeSpan.Zero),
                CounterBefore = RowFields.Hours(3000),
                CounterAfter = RowFields.Hours(12),
            },
            ToldBy = "test",
        }, Ct);
        var pack = await client.GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        Assert.Equal(12, Chain(pack, "K-1").GetProperty("last_counter_h").GetDouble());
    }

    // 1254.2 mm over 48 pitches is 2.87 %; over 49 pitches 0.77 %, as is to be expected.
    [Fact]
    public async Task A_doubted_reading_is_asked_about_and_then_confirmed_corrected_or_withdrawn_once()
    {
        using var client = await FilledAsync();
        var body = Body(1254.2);
        var question = await (await client.PostAsJsonAsync("/api/v1/readings/question", body, Ct)).Content
            .ReadFromJsonAsync<JsonElement>(Ct);
        Assert.True(question.GetProperty("is_doubted").GetBoolean());
        Assert.Equal("pitches_miscounted", question.GetProperty("slips")[0].GetProperty("kind").GetString());
        await using (var db = await host.OpenAsync()) Assert.Equal(4, await db.Readings.CountAsync(Ct));

        var id = await WaitingAsync(client, "doubted", body);
        foreach (var expected in new[] { HttpStatusCode.Created, HttpStatusCode.OK })
        {
            var answer =
                await SendAsync(client, HttpMethod.Post, $"/api/v1/readings/{id}/corrections", "corrected", Body(1254.2, 49));
            Assert.Equal(expected, answer.StatusCode);
        }

        var other = await WaitingAsync(client, "doubted-2", Body(1254.4, counter: 3100));
        Assert.True((await SendAsync(
            client, HttpMethod.Put, $"/api/v1/readings/{other}/confirmation", "yes", new { by = "ann" })).IsSuccessStatusCode);
        Assert.True((await SendAsync(client, HttpMethod.Put, $"/api/v1/readings/{other}/withdrawal", "no",
            new { by = "ann", why = "slip" })).IsSuccessStatusCode);
        var standing = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-1/readings", Ct);
        Assert.Equal([48, 48, 48, 48, 49], standing.EnumerateArray().Select(r => r.GetProperty("pitches").GetInt32()));
    }

    [Fact]
    public async Task Several_lengths_are_kept_as_told_and_their_mean_counts()
    {
        using var client = await FilledAsync();
        var answer = await SendAsync(client, HttpMethod.Post, "/api/v1/readings", "several", Body("1230.4; 1230.6; 1230.5"));
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        await using var db = await host.OpenAsync();
        var row = await db.Readings.SingleAsync(r => r.Key == "several", Ct);
        Assert.Equal(1230.5, row.LengthMm, 1e-9);
        Assert.Equal("1230.4; 1230.6; 1230.5 mm", row.LengthAsTold);
        Assert.Equal(ReadingStanding.Accepted, row.Standing);
    }

    [Theory]
    [InlineData("/api/v1/readings/4711/confirmation", "PUT")]
    [InlineData("/api/v1/readings/4711/withdrawal", "PUT")]
    public async Task A_word_on_a_reading_that_is_not_there_is_refused(string path, string method)
    {
        using var client = await FilledAsync();
        var answer = await SendAsync(client, new HttpMethod(method), path, "word", new { by = "ann" });
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
    }

    private async Task<HttpClient> FilledAsync()
    {
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
        return host.CreateClient();
    }

    private static JsonElement Chain(JsonElement pack, string name) =>
        pack.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("chain").GetString() == name);

    private static object Body(double length, int pitches = 48, double counter = 3000) =>
        Body(length.ToString(System.Globalization.CultureInfo.InvariantCulture), pitches, counter);

    private static object Body(string length, int pitches = 48, double counter = 3000) =>
        new
        {
            chain = "K-1",
            taken_at = "2026-04-10T00:00:00Z",
            counter_h = counter,
            tool = "tape",
            pitches,
            length,
            unit = "mm",
        };

    private static async Task<long> WaitingAsync(HttpClient client, string key, object body)
    {
        var taken = await (await SendAsync(client, HttpMethod.Post, "/api/v1/readings", key, body)).Content
            .ReadFromJsonAsync<JsonElement>(Ct);
        Assert.Equal("waiting", taken.GetProperty("standing").GetString());
        return taken.GetProperty("id").GetInt64();
    }

    private static async Task<HttpResponseMessage> SendAsync(
        HttpClient client, HttpMethod method, string path, string key, object body)
    {
        using var request = new HttpRequestMessage(method, path) { Content = JsonContent.Create(body) };
        request.Headers.Add("Idempotency-Key", key);
        return await client.SendAsync(request, Ct);
    }
}
