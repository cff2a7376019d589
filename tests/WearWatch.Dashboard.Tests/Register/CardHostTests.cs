using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.Register;

public sealed class CardHostTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();
    private HttpClient client = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        client = host.CreateClient();
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task A_card_goes_out_is_changed_and_the_change_is_recorded()
    {
        var card = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-2/master-data", Ct);
        var answer = await PutAsync("K-2", card, ("centre_distance_mm", "950"), ("limit_set_reason", "\"jam\""),
            ("why", "\"measured\""), ("by", "\"Vera\""));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var kept = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        Assert.Equal((950, card.GetProperty("revision").GetInt32() + 1),
            (kept.GetProperty("centre_distance_mm").GetDouble(), kept.GetProperty("revision").GetInt32()));
        var changes = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-2/master-data/changes", Ct);
        Assert.Contains(changes.EnumerateArray(),
            c => (c.GetProperty("field").GetString(), c.GetProperty("why").GetString()) == ("centre_distance_mm", "measured"));
    }

    [Fact]
    public async Task A_change_that_would_lose_another_is_a_conflict()
    {
        var card = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-2/master-data", Ct);
        (string, string)[] words = [("limit_set_reason", "\"jam\""), ("why", "\"measured\"")];
        Assert.Equal(HttpStatusCode.OK, (await PutAsync("K-2", card, [("pitches", "95"), .. words])).StatusCode);
        Assert.Equal(HttpStatusCode.Conflict, (await PutAsync("K-2", card, [("pitches", "94"), .. words])).StatusCode);
    }

    [Fact]
    public async Task A_program_can_take_a_chain_into_the_register()
    {
        var card = JsonSerializer.Deserialize<JsonElement>("""{"chain_type":"16B-1"}""");
        Assert.Equal(HttpStatusCode.Created, (await PutAsync("K-9", card)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await PutAsync("K-9", card)).StatusCode);
        Assert.Equal(
            25.4, (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/K-9", Ct)).GetProperty("pitch_mm").GetDouble());
    }

    [Fact]
    public async Task What_is_wrong_is_told_by_field()
    {
        var answer =
            await PutAsync("K-9", JsonSerializer.Deserialize<JsonElement>("""{"pitch_mm":-1,"dust":"sand","limit_pct":2}"""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var errors = (await answer.Content.ReadFromJsonAsync<JsonElement>(Ct)).GetProperty("errors");
        Assert.Equal(["dust", "family", "pitch_mm"], errors.EnumerateObject().Select(e => e.Name).Order());
    }

    private Task<HttpResponseMessage> PutAsync(string chain, JsonElement card, params (string Name, string Json)[] changes)
    {
        var fields = card.EnumerateObject().Where(p => changes.All(c => c.Name != p.Name))
            .Select(p => $"\"{p.Name}\":{p.Value.GetRawText()}")
            .Concat(changes.Select(c => $"\"{c.Name}\":{c.Json}"));
        var request = new HttpRequestMessage(HttpMethod.Put, $"/api/v1/chains/{chain}/master-data")
        {
            Content = new StringContent("{" + string.Join(',', fields) + "}", Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Idempotency-Key", "card-test");
        return client.SendAsync(request, Ct);
    }
}
