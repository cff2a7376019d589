using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Mqtt;

/// <summary>Takes telemetry from a broker and acknowledges each message after it is committed to disk.</summary>
/// <remarks>
/// The session is persistent: what is published while the worker is away waits at the broker. Each connection has a client of
/// its own, so that an acknowledgement that comes late never meets another message that bears its number by chance.
/// </remarks>
public sealed class MqttIntake(
    TelemetryPump pump, BrokerLink link, IOptions<MqttOptions> mqtt, IOptions<TelemetryOptions> telemetry, TimeProvider clock,
    ILogger<MqttIntake> logger) : BackgroundService
{
    private static readonly TimeSpan FirstWait = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    private readonly MqttClientFactory factory = new();

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
            var arrival = new Arrival(message.ApplicationMessage.Topic, Copy(message.ApplicationMessage));
            await pump.OfferAsync(arrival, () => message.AcknowledgeAsync(ct), ct);
        };
        var answer = await client.ConnectAsync(Options(), ct);
        await client.SubscribeAsync(factory.CreateSubscribeOptionsBuilder()
            .WithTopicFilter(Filter(), MqttQualityOfServiceLevel.AtLeastOnce).Build(), ct);
        connected();
        link.Connected(clock.GetUtcNow());
        logger.BrokerConnected(mqtt.Value.Server, mqtt.Value.Port, Filter(), answer.IsSessionPresent);
        await ended.Task.WaitAsync(ct);
    }

    private MqttClientOptions Options()
    {
        var options = factory.CreateClientOptionsBuilder()
            .WithTcpServer(mqtt.Value.Server, mqtt.Value.Port)
            .WithProtocolVersion(MqttProtocolVersion.V500)
            .WithClientId(mqtt.Value.ClientId)
            .WithCleanStart(false)
            .WithSessionExpiryInterval((uint)mqtt.Value.KeptWhileAway.TotalSeconds)
            .WithReceiveMaximum(mqtt.Value.MostUnacknowledged);
        if (mqtt.Value.UserName.Length > 0) options.WithCredentials(mqtt.Value.UserName, mqtt.Value.Password);
        if (mqtt.Value.UseTls) options.WithTlsOptions(tls => tls.UseTls());
        return options.Build();
    }

    private string Filter()
    {
        var filter = TelemetryTopic.FilterOf(telemetry.Value.Plant);
        return mqtt.Value.SharedBy.Length > 0 ? $"$share/{mqtt.Value.SharedBy}/{filter}" : filter;
    }

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
