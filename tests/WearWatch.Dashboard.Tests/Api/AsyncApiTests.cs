using System.Net;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Plant.Telemetry;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>The description of events for programs says what is sent, member by member.</summary>
public sealed class AsyncApiTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private const string Address = "/asyncapi/v1.json";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_kind_of_event_is_described_with_the_members_that_are_sent()
    {
        var described = await ReadAsync();
        var messages = described["components"]!["messages"]!.AsObject()
            .Where(m => (string?)m.Value!["contentType"] == "application/cloudevents+json").Select(m => m.Value!).ToList();
        Assert.Equal(
            Enum.GetValues<WebhookEventKind>().Select(WebhookKindWords.TypeOf).Order(),
            messages.Select(m => (string)m["payload"]!["properties"]!["type"]!["const"]!).Order());
        Assert.Equal(messages.Count, described["channels"]!["webhooks"]!["messages"]!.AsObject().Count);
        var schemas = described["components"]!["schemas"]!;
        Compare(WebhookJson.Default.NoticeEventJson, schemas["notice"]!);
        Compare(WebhookJson.Default.ReplacementEventJson, schemas["replacement"]!);
        Compare(WebhookJson.Default.StopPackageJson, schemas["stop"]!);
        Compare(WebhookJson.Default.StopSwapJson, schemas["stop"]!["properties"]!["swaps"]!["items"]!);
        Compare(WebhookJson.Default.StopPickJson, schemas["stop"]!["properties"]!["picks"]!["items"]!);
        Compare(WebhookJson.Default.KitJson, schemas["stop"]!["properties"]!["swaps"]!["items"]!["properties"]!["kit"]!);
    }

    [Fact]
    public async Task Every_kind_of_telemetry_is_described()
    {
        var words = (await ReadAsync())["channels"]!.AsObject().Select(c => c.Value!["address"]?.ToString())
            .OfType<string>().Select(address => address.Split('/')[^1]);
        Assert.Equal(TelemetryTopic.Words.Order(), words.Order());
    }

    [Fact]
    public async Task All_that_is_named_is_there_and_strangers_read_nothing()
    {
        var described = await ReadAsync();
        foreach (var name in References(described))
        {
            JsonNode? at = described;
            foreach (var step in name.Split('/').Skip(1)) at = at?[step];
            Assert.True(at is not null, name);
        }

        using var stranger = new Caller(plant.Host);
        Assert.Equal(HttpStatusCode.Unauthorized, (await stranger.Http.GetAsync(Address, Ct)).StatusCode);
    }

    private async Task<JsonNode> ReadAsync() => JsonNode.Parse(await plant.Reader.Http.GetStringAsync(Address, Ct))!;

    private static void Compare(JsonTypeInfo sent, JsonNode described)
    {
        var members = sent.Properties.Select(p => p.Name).Order().ToList();
        Assert.Equal(members, described["properties"]!.AsObject().Select(p => p.Key).Order());
        Assert.Equal(members, described["required"]!.AsArray().Select(r => (string)r!).Order());
    }

    private static IEnumerable<string> References(JsonNode? node) => node switch
    {
        JsonObject all => all.SelectMany(m => m is { Key: "$ref", Value: { } to } ? [(string)to!] : References(m.Value)),
        JsonArray list => list.SelectMany(References),
        _ => [],
    };
}
