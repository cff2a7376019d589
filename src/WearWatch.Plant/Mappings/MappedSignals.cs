using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;
using WearWatch.Storage;

namespace WearWatch.Plant.Mappings;

/// <summary>Reads foreign signals by the mappings that are active.</summary>
public sealed class MappedSignals(ActiveMappings active, ChainIds chains, TimeProvider clock) : IForeignSignals
{
    private static readonly Phrase NoPayload = $"Not a payload of Sparkplug B.";

    /// <inheritdoc/>
    public async Task<IReadOnlyList<TelemetryText>?> ReadAsync(WearDb db, Arrival arrival, CancellationToken ct)
    {
        var mappings = await active.AskAsync(db, ct);
        if (SparkplugTopic.IsIn(arrival.Topic))
        {
            var metrics = mappings.Where(m => m.Row.Source == SignalSource.SparkplugMetric).ToList();
            return SparkplugTopic.Read(arrival.Topic) is { } topic ? await SparkplugAsync(db, metrics, topic, arrival, ct) : [];
        }

        TelemetryText[] read =
        [
            .. mappings.Where(m => m.Row.Source == SignalSource.MqttJson && m.Topic.Match(arrival.Topic) is not null)
                .Select(m => m.Read(arrival, clock.GetUtcNow()))
        ];
        return read.Length > 0 ? read : null;
    }

    /// <summary>Every node's births and deaths are followed, mapped or not; what no mapping wants is no fault.</summary>
    private async Task<IReadOnlyList<TelemetryText>> SparkplugAsync(
        WearDb db, IReadOnlyList<SignalMapping> mappings, SparkplugTopic topic, Arrival arrival, CancellationToken ct)
    {
        var isWanted = mappings.Any(m => m.IsOfNode(topic));
        if (SparkplugPayload.Read(arrival.Payload) is not { } payload)
            return isWanted ? [new TelemetryText.NotUnderstood(NoPayload)] : [];
        var session = await SparkplugSessions.OfAsync(db, topic, ct);
        var outcome = session.Take(topic, payload, arrival.At ?? clock.GetUtcNow());
        var texts = new List<TelemetryText>();
        foreach (var reading in outcome.Readings)
        {
            foreach (var text in mappings.Select(m => m.Read(topic, reading)).OfType<TelemetryText>())
            {
                texts.Add(text);
                if (text is TelemetryText.Understood { Message.Chain: var chain }
                    && (await chains.FindAsync(db, [chain], ct)).TryGetValue(chain, out var id)) reading.Metric.ChainId = id;
            }
        }

        await SparkplugSessions.KeepAsync(db, session, ct);
        if (outcome.Fault is { } fault && isWanted) texts.Add(new TelemetryText.NotUnderstood(fault));
        return texts;
    }
}
