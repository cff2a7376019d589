using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using MQTTnet;
using MQTTnet.Protocol;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Mqtt;

/// <summary>Takes telemetry from a broker and acknowledges each message after it is committed to disk.</summary>
/// <remarks>
/// The session is persistent: what is published while the worker is away waits at the broker. Each connection has a client of
/// its own, so that an acknowledgement that comes late never meets another message that bears its number by chance.
/// </remarks>
public sealed class MqttIntake(
    IntakeTopics topics, BrokerLink link, BrokerVoice voice, SparkplugSessions sessions, IOptions<MqttOptions> mqtt,
    TimeProvider clock, ILogger<MqttIntake> logger) : BackgroundService
{
    private static readonly TimeSpan FirstWait = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    private readonly MqttClientFactory factory = new();

    private string Host => mqtt.Value.SparkplugHostId;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (mqtt.Value.Server.Length == 0) return;
        var wait = FirstWait;
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await ConnectedAsync(() => wait = FirstWait, stoppingToken);
                link.Lost("The broker closed the connection.", clock.GetUtcNow());
            }
            catch (Exception e) when (e is not OperationCanceledException || !stoppingToken.IsCancellationRequested)
            {
                link.Lost(e.Message, clock.GetUtcNow());
            }

            logger.BrokerLost(mqtt.Value.Server, mqtt.Value.Port, link.Problem, wait);
            await Task.Delay(wait, clock, stoppingToken);
            wait = wait * 2 < LongestWait ? wait * 2 : LongestWait;
        }
    }

    /// <summary>Connects, subscribes and takes messages until the connection ends.</summary>
    private async Task ConnectedAsync(Action connected, CancellationToken ct)
    {
        using var client = factory.CreateMqttClient();
        var since = clock.GetUtcNow();
        var ended = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        client.DisconnectedAsync += _ =>
        {
            ended.TrySetResult();
            return Task.CompletedTask;
        };
        // Before connecting: what waited at the broker comes at once.
        client.ApplicationMessageReceivedAsync += async message =>
        {
            message.AutoAcknowledge = false;
            var arrival = new Arrival(message.ApplicationMessage.Topic, Copy(message.ApplicationMessage), clock.GetUtcNow());
            await topics.TakeAsync(arrival, () => message.AcknowledgeAsync(ct), ct);
            // Another process of this host's name may have gone meanwhile and left word that the host is away.
            if (Host.Length > 0 && arrival.Topic == SparkplugTopic.StateOf(Host) && SparkplugState.IsOffline(arrival.Payload))
                await client.PublishAsync(State(isOnline: true, since), ct);
        };
        var answer = await client.ConnectAsync(Options(since), ct);
        using var subscriptions = new Subscriptions(topics, client);
        await subscriptions.FollowAsync(ct);
        if (Host.Length > 0) await GreetAsync(client, answer.IsSessionPresent, since, ct);
        using var speaking = voice.By((message, stop) => client.PublishAsync(message, stop));
        connected();
        link.Connected(clock.GetUtcNow());
        logger.BrokerConnected(mqtt.Value.Server, mqtt.Value.Port, topics.Own, answer.IsSessionPresent);
        while (await subscriptions.ChangeAsync(ended.Task, ct)) await subscriptions.FollowAsync(ct);
    }

    /// <summary>Says that the host is there, as edge nodes wait for it to be.</summary>
    private async Task GreetAsync(IMqttClient client, bool isSessionKept, DateTimeOffset since, CancellationToken ct)
    {
        if (!isSessionKept) await sessions.ForgetAsync(ct);
        await client.PublishAsync(State(isOnline: true, since), ct);
    }

    private MqttClientOptions Options(DateTimeOffset since)
    {
        var options = mqtt.Value.Client(mqtt.Value.ClientId)
            .WithCleanStart(false)
            .WithSessionExpiryInterval((uint)mqtt.Value.KeptWhileAway.TotalSeconds)
            .WithReceiveMaximum(mqtt.Value.MostUnacknowledged);
        if (Host.Length == 0) return options.Build();
        var will = State(isOnline: false, since);
        return options.WithWillTopic(will.Topic).WithWillPayload(will.Payload.FirstSpan.ToArray()).WithWillRetain()
            .WithWillQualityOfServiceLevel(will.QualityOfServiceLevel).Build();
    }

    private MqttApplicationMessage State(bool isOnline, DateTimeOffset since) => new()
    {
        Topic = SparkplugTopic.StateOf(Host),
        PayloadSegment = SparkplugState.Payload(isOnline, since),
        QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
        Retain = true,
    };

    /// <summary>The payload for keeps: the library uses its buffer again.</summary>
    internal static byte[] Copy(MqttApplicationMessage message)
    {
        var bytes = new byte[message.Payload.Length];
        var at = 0;
        foreach (var part in message.Payload)
        {
            part.Span.CopyTo(bytes.AsSpan(at));
            at += part.Length;
        }

        return bytes;
    }
}
