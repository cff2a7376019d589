using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Sparkplug;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Mqtt;

/// <summary>Looks for changes of mappings that another process saved, and asks edge nodes for births that are wanted.</summary>
public sealed class MappingWatch(
    ActiveMappings active, SparkplugSessions sessions, BrokerVoice voice, IOptions<MqttOptions> mqtt, TimeProvider clock,
    ILogger<MappingWatch> logger) : JobLoop("signal mappings", TimeSpan.FromSeconds(1), clock, logger)
{
    private readonly TimeProvider time = clock;

    protected override async Task RunOnceAsync(CancellationToken ct)
    {
        await active.RefreshAsync(ct);
        if (mqtt.Value.SparkplugHostId.Length == 0 || !voice.IsHeard) return;
        foreach (var node in await sessions.ToAskAsync(ct))
            await voice.SayAsync(
                SparkplugTopic.CommandOf(node.Group, node.Node), SparkplugPayload.AskForBirth(time.GetUtcNow()), ct);
    }
}
