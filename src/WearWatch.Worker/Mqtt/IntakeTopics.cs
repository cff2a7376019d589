using Microsoft.Extensions.Options;
using MQTTnet.Packets;
using MQTTnet.Protocol;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Mqtt;

/// <summary>Which topics are taken in: our own, those of active mappings, Sparkplug's where this process is a host.</summary>
public sealed class IntakeTopics(
    TelemetryPump pump, ActiveMappings active, HeardMessages heard, TopicListener listener, IOptions<MqttOptions> mqtt,
    IOptions<TelemetryOptions> telemetry)
{
    /// <summary>Some mapping came, changed or went.</summary>
    public event Action Changed
    {
        add => active.Changed += value;
        remove => active.Changed -= value;
    }

    /// <summary>What is subscribed to for our own messages.</summary>
    public string Own => Shared(TelemetryTopic.FilterOf(telemetry.Value.Plant));

    /// <summary>What is to be subscribed to now.</summary>
    /// <remarks>
    /// What was retained of foreign topics is not sent: nobody knows how old it is. Sparkplug's messages come in an order, so
    /// they are never shared among workers.
    /// </remarks>
    internal IReadOnlyList<MqttTopicFilter> Filters =>
    [
        Filter(Own),
        .. active.Filters.Select(f => Filter(Shared(f), MqttRetainHandling.DoNotSendOnSubscribe)),
        .. mqtt.Value.SparkplugHostId.Length > 0 ? new[] { Filter(SparkplugTopic.Filter, isNoLocal: true) } : [],
    ];

    /// <summary>Looks at the mappings as they are now.</summary>
    internal Task LookAsync(CancellationToken ct) => active.RefreshAsync(ct);

    /// <summary>Filters that a kept session may still hold, though no mapping wants them any more.</summary>
    internal async Task<IReadOnlyList<string>> FormerAsync(CancellationToken ct) =>
        [.. (await active.FormerFiltersAsync(ct)).Select(Shared)];

    /// <summary>Takes what was subscribed to.</summary>
    internal ValueTask TakeAsync(Arrival arrival, Func<Task> stored, CancellationToken ct)
    {
        if (!listener.Wants(arrival.Topic)) Hear(arrival); // else it is heard by the listener
        return pump.OfferAsync(arrival, stored, ct);
    }

    /// <summary>Takes what comes by at the embedded broker, where it is wanted; waits until it is committed to disk.</summary>
    internal Task StoreAsync(Arrival arrival, CancellationToken ct)
    {
        var isWanted = TelemetryTopic.Read(arrival.Topic) is { } own ? own.Plant == telemetry.Value.Plant
            : SparkplugTopic.IsIn(arrival.Topic) ? mqtt.Value.SparkplugHostId.Length > 0
            : active.Wants(arrival.Topic);
        if (isWanted || listener.Wants(arrival.Topic)) Hear(arrival);
        return isWanted ? pump.StoreAsync(arrival, ct) : Task.CompletedTask;
    }

    private void Hear(Arrival arrival)
    {
        if (TopicListener.IsForeign(arrival.Topic)) heard.Hear(arrival);
    }

    private string Shared(string filter) => mqtt.Value.SharedBy.Length > 0 ? $"$share/{mqtt.Value.SharedBy}/{filter}" : filter;

    private static MqttTopicFilter Filter(
        string filter, MqttRetainHandling retained = MqttRetainHandling.SendAtSubscribe, bool isNoLocal = false) => new()
        {
            Topic = filter,
            QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
            RetainHandling = retained,
            NoLocal = isNoLocal,
        };
}
