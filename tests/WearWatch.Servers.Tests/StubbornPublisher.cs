using System.Text;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;

namespace WearWatch.Servers.Tests;

/// <summary>A sender that publishes with quality of service 1 and sends again, with the same id, whatever was not acknowledged.</summary>
/// <param name="port">The broker's port on this machine.</param>
/// <param name="inFlight">How many messages may be on their way.</param>
internal sealed class StubbornPublisher(int port, int inFlight = 50)
{
    private readonly MqttClientFactory factory = new();
    private int acknowledged;

    /// <summary>How many messages were acknowledged so far.</summary>
    public int Acknowledged => Volatile.Read(ref acknowledged);

    /// <summary>Publishes all, whatever happens to the broker meanwhile.</summary>
    public async Task PublishAsync(IEnumerable<(string Topic, string Payload)> messages, CancellationToken ct)
    {
        using var client = factory.CreateMqttClient();
        foreach (var some in messages.Chunk(inFlight))
        {
            var open = some.ToList();
            while (open.Count > 0)
            {
                ct.ThrowIfCancellationRequested();
                try
                {
                    if (!client.IsConnected) await ConnectAsync(client, ct);
                    var done = await Task.WhenAll(open.Select(m => TryAsync(client, m, ct)));
                    open = [.. open.Where((_, i) => !done[i])];
                }
                catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
                {
                    await Task.Delay(50, ct);
                }
            }
        }
    }

    private Task ConnectAsync(IMqttClient client, CancellationToken ct) => client.ConnectAsync(
        factory.CreateClientOptionsBuilder().WithTcpServer("127.0.0.1", port).WithProtocolVersion(MqttProtocolVersion.V500)
            .WithClientId($"sender-{Guid.NewGuid():N}").WithTimeout(TimeSpan.FromSeconds(20)).Build(), ct);

    private async Task<bool> TryAsync(IMqttClient client, (string Topic, string Payload) message, CancellationToken ct)
    {
        try
        {
            var answer = await client.PublishAsync(new MqttApplicationMessage
            {
                Topic = message.Topic,
                PayloadSegment = Encoding.UTF8.GetBytes(message.Payload),
                QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
            }, ct);
            if (!answer.IsSuccess) return false;
            Interlocked.Increment(ref acknowledged);
            return true;
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            return false;
        }
    }
}
