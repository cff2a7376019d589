using System.Text;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;

namespace WearWatch.Servers.Tests;

/// <summary>
/// A sender that publishes with quality of service 1 and sends again, with the same id, whatever was not acknowledged.
/// </summary>
/// <remarks>
/// After a broken connection it also sends again what was acknowledged in the last <see cref="Remembered"/>: a broker that saves
/// at each change acknowledges first and writes to disk just after. docs/operating.md asks this of every sender.
/// </remarks>
/// <param name="port">The broker's port on this machine.</param>
/// <param name="inFlight">How many messages may be on their way.</param>
/// <param name="pace">Awaited before each handful, with how many are acknowledged so far.</param>
internal sealed class StubbornPublisher(int port, int inFlight = 50, Func<int, Task>? pace = null)
{
    private static readonly TimeSpan Remembered = TimeSpan.FromSeconds(5);

    private readonly Queue<(long At, (string Topic, string Payload)[] Messages)> recent = [];
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
            if (pace is not null) await pace(Acknowledged);
            var open = some.ToList();
            while (open.Count > 0)
            {
                ct.ThrowIfCancellationRequested();
                try
                {
                    if (!client.IsConnected)
                    {
                        await ConnectAsync(client, ct);
                        open = [.. recent.SelectMany(r => r.Messages), .. some];
                    }

                    var done = await Task.WhenAll(open.Select(m => TryAsync(client, m, ct)));
                    open = [.. open.Where((_, i) => !done[i])];
                }
                catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
                {
                    await Task.Delay(50, ct);
                }
            }

            Interlocked.Add(ref acknowledged, some.Length);
            recent.Enqueue((TimeProvider.System.GetTimestamp(), some));
            while (TimeProvider.System.GetElapsedTime(recent.Peek().At) > Remembered) recent.Dequeue();
        }
    }

    private Task<MqttClientConnectResult> ConnectAsync(IMqttClient client, CancellationToken ct) => client.ConnectAsync(
        factory.CreateClientOptionsBuilder().WithTcpServer("127.0.0.1", port).WithProtocolVersion(MqttProtocolVersion.V500)
            .WithClientId($"sender-{Guid.NewGuid():N}").WithTimeout(TimeSpan.FromSeconds(20)).Build(), ct);

    private static async Task<bool> TryAsync(IMqttClient client, (string Topic, string Payload) message, CancellationToken ct)
    {
        try
        {
            var answer = await client.PublishAsync(new MqttApplicationMessage
            {
                Topic = message.Topic,
                PayloadSegment = Encoding.UTF8.GetBytes(message.Payload),
                QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
            }, ct);
            return answer.IsSuccess;
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            return false;
        }
    }
}
