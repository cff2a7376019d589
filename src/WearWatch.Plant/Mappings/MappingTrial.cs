using System.Text.Json;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>Tries a mapping on what came, before anything is saved.</summary>
/// <param name="Mapping">The mapping.</param>
/// <param name="Chains">The names of the chains that are registered.</param>
public sealed record MappingTrial(SignalMapping Mapping, IReadOnlySet<string> Chains)
{
    /// <summary>On messages of JSON; others than the mapping's are passed over.</summary>
    public IReadOnlyList<TrialLine> Of(IEnumerable<HeardMessageRow> heard) =>
    [
        .. heard.Where(h => Mapping.Topic.Match(h.Topic) is not null)
            .Select(h => Line(h.Topic, Mapping.Read(new Arrival(h.Topic, h.Payload), h.At)))
    ];

    /// <summary>On the newest values of metrics; others than the mapping's are passed over.</summary>
    public IReadOnlyList<TrialLine> Of(IEnumerable<NodeMetric> metrics) =>
    [
        .. metrics.Where(m => m.Metric.Value.Length > 0)
            .Select(m => (m, Text: Mapping.Read(m.Topic, Reading(m.Metric))))
            .Where(t => t.Text is not null).Select(t => Line(t.m.Address, t.Text!))
    ];

    private static SparkplugReading Reading(SparkplugMetricRow metric) =>
        new(metric, JsonSerializer.Deserialize<JsonElement>(metric.Value), metric.At);

    private TrialLine Line(string from, TelemetryText text) => text switch
    {
        TelemetryText.Understood { Message: var message } when Chains.Contains(message.Chain) => new(from, message, Phrase.None),
        TelemetryText.Understood { Message: var message } =>
            new(from, message, $"There is no chain '{message.Chain}' in the register."),
        TelemetryText.NotUnderstood not => new(from, null, not.Reason),
        _ => throw new InvalidOperationException("A message is understood or it is not."),
    };
}
