using System.Buffers;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;
using WearWatch.Worker.Tests.Sparkplug;

namespace WearWatch.Servers.Tests;

/// <summary>
/// A Sparkplug edge node <c>Mill/N1</c> on a real broker: its will is its death, and it answers the command for births.
/// </summary>
internal sealed class EdgeNode(int port) : IAsyncDisposable
{
    private readonly MqttClientFactory factory = new();
    private IMqttClient? client;
    private long session;
    private int seq;

    /// <summary>What its hour counter shows.</summary>
    public double Hours { get; set; } = 100;

    /// <summary>How often it was asked for births.</summary>
    public int Asked { get; private set; }

    /// <summary>The newest state of the host <c>wearwatch</c>; null before any.</summary>
    public bool? HostIsOnline { get; private set; }

    /// <summary>Begins a session, with the death of it as the will.</summary>
    public async Task ConnectAsync(CancellationToken ct)
    {
        var death = SparkplugMessage.NodeDeath(++session, Now);
        client = factory.CreateMqttClient();
        client.ApplicationMessageReceivedAsync += async message =>
        {
            if (message.ApplicationMessage.Topic == SparkplugTopic.StateOf("wearwatch"))
                HostIsOnline = !SparkplugState.IsOffline(message.ApplicationMessage.Payload.ToArray());
            else if (SparkplugPayload.Read(message.ApplicationMessage.Payload.ToArray())!.Metrics.Any(m => m.Raw is true))
            {
                Asked++;
                await BirthAsync(CancellationToken.None);
            }
        };
        await client.ConnectAsync(
            factory.CreateClientOptionsBuilder().WithTcpServer("127.0.0.1", port).WithProtocolVersion(MqttProtocolVersion.V311)
                .WithClientId("N1").WithCleanSession().WithWillTopic(death.Topic).WithWillPayload(death.Payload.ToArray())
                .WithWillQualityOfServiceLevel(MqttQualityOfServiceLevel.AtLeastOnce).Build(), ct);
        await client.SubscribeAsync(SparkplugTopic.CommandOf("Mill", "N1"), cancellationToken: ct);
        await client.SubscribeAsync(SparkplugTopic.StateOf("wearwatch"), MqttQualityOfServiceLevel.AtLeastOnce, ct);
    }

    public Task BirthAsync(CancellationToken ct) =>
        SayAsync(SparkplugMessage.NodeBirth(session, Hours, Now, seq = 0), ct);

    /// <summary>Tells the hours by their alias, with quality of service 0 as the specification asks.</summary>
    public Task DataAsync(CancellationToken ct) =>
        SayAsync(SparkplugMessage.NodeData(Hours, Now, seq = (seq + 1) % 256), ct);

    /// <summary>Is gone without a word, as by a power cut.</summary>
    public void Die()
    {
        client?.Dispose();
        client = null;
    }

    public ValueTask DisposeAsync()
    {
        Die();
        return ValueTask.CompletedTask;
    }

    private static DateTimeOffset Now => TimeProvider.System.GetUtcNow();

    private Task<MqttClientPublishResult> SayAsync(Arrival message, CancellationToken ct) => client!.PublishAsync(
        new MqttApplicationMessage { Topic = message.Topic, PayloadSegment = message.Payload.ToArray() }, ct);
}
