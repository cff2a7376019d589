using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using MQTTnet;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Mqtt;

/// <summary>Listens at the broker while a person wants to see what is published under some topics.</summary>
/// <remarks>
/// It has a connection of its own that keeps no session: what a person looks at touches nothing that is taken in. What was
/// retained comes too.
/// </remarks>
public sealed class TopicListener(
    ListeningDesk desk, HeardMessages heard, IOptions<MqttOptions> mqtt, TimeProvider clock, ILogger<TopicListener> logger)
        : JobLoop("listening to topics", TimeSpan.FromSeconds(1), clock, logger)
{
    private readonly HashSet<string> subscribed = new(StringComparer.Ordinal);
    private volatile IReadOnlyList<TopicPattern> wanted = [];
    private IMqttClient? client;

    /// <summary>Whether somebody listens to a topic now.</summary>
    public bool Wants(string topic) => wanted.Any(w => w.Match(topic) is not null);

    /// <summary>Whether a topic is neither our own nor Sparkplug's.</summary>
    public static bool IsForeign(string topic) => TelemetryTopic.Read(topic) is null && !SparkplugTopic.IsIn(topic);

    public override void Dispose()
    {
        client?.Dispose();
        base.Dispose();
    }

    protected override async Task RunOnceAsync(CancellationToken ct)
    {
        var filters = await desk.FiltersAsync(ct);
        wanted = [.. filters.Select(f => TopicPattern.Read(f, out _)).OfType<TopicPattern>()];
        if (filters.Count > 0) await heard.KeepAsync(ct);
        if (mqtt.Value.Server.Length > 0) await FollowAsync(filters, ct);
    }

    private async Task FollowAsync(IReadOnlyList<string> filters, CancellationToken ct)
    {
        if (client is not null && (filters.Count == 0 || !client.IsConnected || !subscribed.IsSubsetOf(filters)))
        {
            client.Dispose();
            client = null;
        }

        if (filters.Count == 0) return;
        client ??= await ConnectAsync(ct);
        foreach (var filter in filters.Where(subscribed.Add))
            await client.SubscribeAsync(new MqttClientSubscribeOptionsBuilder().WithTopicFilter(filter).Build(), ct);
    }

    private async Task<IMqttClient> ConnectAsync(CancellationToken ct)
    {
        subscribed.Clear();
        var made = new MqttClientFactory().CreateMqttClient();
        made.ApplicationMessageReceivedAsync += message =>
        {
            var arrival = new Arrival(message.ApplicationMessage.Topic, MqttIntake.Copy(message.ApplicationMessage));
            if (IsForeign(arrival.Topic)) heard.Hear(arrival);
            return Task.CompletedTask;
        };
        await made.ConnectAsync(mqtt.Value.Client($"{mqtt.Value.ClientId}-listening-{Guid.NewGuid():N}").Build(), ct);
        return made;
    }
}
