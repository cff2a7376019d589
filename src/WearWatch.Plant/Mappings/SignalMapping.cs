using System.Text.Json;
using WearWatch.Plant.JsonPaths;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>A mapping that is sound, ready to read foreign signals.</summary>
public sealed class SignalMapping
{
    /// <summary>The kinds of which each message is a state: mapped or delivered once more it changes nothing.</summary>
    public static readonly IReadOnlyList<TelemetryKind> Kinds =
    [
        TelemetryKind.RunningCounter, TelemetryKind.RunningSwitch, TelemetryKind.RunningPulses, TelemetryKind.Temperature,
    ];

    private const int LongestName = 80;

    private readonly ChainNaming chain;
    private readonly JsonPath? value;
    private readonly JsonPath? time;
    private readonly JsonPath? unit;

    private SignalMapping(SignalMappingRow row, TopicPattern topic, JsonPath? value, JsonPath? time, JsonPath? unit)
    {
        (Row, Topic, this.value, this.time, this.unit) = (row, topic, value, time, unit);
        chain = new ChainNaming(row.Chain.Trim(), row.Words);
    }

    /// <summary>What was saved, or is to be.</summary>
    public SignalMappingRow Row { get; }

    /// <summary>The topics that it reads; of Sparkplug group, node and device.</summary>
    public TopicPattern Topic { get; }

    /// <summary>Makes it ready.</summary>
    /// <param name="row">The mapping.</param>
    /// <param name="faults">What is wrong, by the name of the property; empty when it is sound.</param>
    public static SignalMapping? Of(SignalMappingRow row, out IReadOnlyDictionary<string, Phrase> faults)
    {
        var found = new Dictionary<string, Phrase>(StringComparer.Ordinal);
        faults = found;
        if (row.Name.Trim() is not { Length: > 0 and <= LongestName })
            found[nameof(row.Name)] = $"A name of 1 to {LongestName} characters.";
        if (!Kinds.Contains(row.Kind)) found[nameof(row.Kind)] = $"Choose the kind of signal.";
        if (!double.IsFinite(row.Scale) || row.Scale == 0) found[nameof(row.Scale)] = $"A number other than 0, such as 0.1.";
        if (!double.IsFinite(row.Offset)) found[nameof(row.Offset)] = $"A number, such as 0.";
        var topic = TopicPattern.Read(row.Topic, out var why);
        if (topic is null) found[nameof(row.Topic)] = why;
        else if (FaultOfTopic(row.Source, topic) is { } wrong) found[nameof(row.Topic)] = wrong;
        else if (new ChainNaming(row.Chain, row.Words).Fault(topic.Captures) is { IsEmpty: false } lost)
            found[nameof(row.Chain)] = lost;
        if (row.Words.Any(w => w.Word.Length == 0 || w.Chain.Length == 0))
            found[nameof(row.Words)] = $"One word a line: word = chain.";
        var isJson = row.Source == SignalSource.MqttJson;
        if (!isJson && row.ValuePath.Length == 0) found[nameof(row.ValuePath)] = $"Name the metric, such as Drive/Hours.";
        var value = isJson ? Path(row.ValuePath, nameof(row.ValuePath)) : null;
        var time = isJson && row.TimeForm != TimeNotation.Arrival ? Path(row.TimePath, nameof(row.TimePath)) : null;
        var unit = isJson && row.UnitPath.Length > 0 ? Path(row.UnitPath, nameof(row.UnitPath)) : null;
        return found.Count > 0 ? null : new SignalMapping(row, topic!, value, time, unit);

        JsonPath? Path(string text, string property)
        {
            if (JsonPath.Read(text, out var fault) is { } path) return path;
            found[property] = fault;
            return null;
        }
    }

    /// <summary>Reads a message of JSON.</summary>
    public TelemetryText Read(Arrival arrival, DateTimeOffset receivedAt)
    {
        if (arrival.Payload.Length > TelemetryText.LongestBytes)
            return Not($"Longer than {TelemetryText.LongestBytes / 1024} KiB.");
        if (Topic.Match(arrival.Topic) is not { } captured) return Not($"The topic is none of this mapping.");
        try
        {
            using var json = JsonDocument.Parse(arrival.Payload);
            return Read(json.RootElement, captured, arrival.At ?? receivedAt);
        }
        catch (InvalidOperationException)
        {
            return Not($"A text in it is not Unicode (UTF-8).");
        }
        catch (JsonException broken)
        {
            return Not($"Not JSON: line {broken.LineNumber + 1}, byte {broken.BytePositionInLine + 1}.");
        }
    }

    /// <summary>Reads a metric's value.</summary>
    /// <param name="topic">Whose metric it is.</param>
    /// <param name="reading">Its value.</param>
    /// <returns>Null when the mapping is of another metric.</returns>
    public TelemetryText? Read(SparkplugTopic topic, SparkplugReading reading) =>
        reading.Metric.Name == Row.ValuePath && Topic.Match(AddressOf(topic, reading.Metric.Device)) is { } captured
            ? Message(reading.Value, "", reading.At, captured)
            : null;

    /// <summary>Whether it reads metrics of a node or of its devices.</summary>
    public bool IsOfNode(SparkplugTopic topic) => Topic.Match(AddressOf(topic, topic.Device)) is not null;

    private static string AddressOf(SparkplugTopic topic, string device) =>
        device.Length > 0 ? $"{topic.Group}/{topic.Node}/{device}" : $"{topic.Group}/{topic.Node}";

    private static Phrase? FaultOfTopic(SignalSource source, TopicPattern topic) => source switch
    {
        SignalSource.SparkplugMetric when topic.Length is not (2 or 3) =>
            $"Group and node, or group, node and device, such as Mill/{Phrase.Verbatim("{node}")}.",
        SignalSource.MqttJson when topic.Filter.StartsWith(SparkplugTopic.Root, StringComparison.Ordinal) =>
            $"These topics are Sparkplug's: choose its metrics as the source.",
        SignalSource.MqttJson when topic.Filter.StartsWith("wearwatch/", StringComparison.Ordinal) =>
            $"These topics are WearWatch's own and need no mapping.",
        _ => null,
    };

    private TelemetryText Read(JsonElement root, IReadOnlyDictionary<string, string> captured, DateTimeOffset receivedAt)
    {
        if (One(value!, root, Row.ValuePath, out var found) is { } noValue) return Not(noValue);
        var (at, toldUnit) = (receivedAt, "");
        if (time is not null)
        {
            if (One(time, root, Row.TimePath, out var told) is { } noTime) return Not(noTime);
            if (SignalFigure.Time(told, Row.TimeForm) is not { } moment)
                return Not($"The time at {Row.TimePath} is {SignalFigure.Raw(told)}, which is not of the chosen form.");
            at = moment;
        }

        if (unit is not null)
        {
            if (One(unit, root, Row.UnitPath, out var told) is { } noUnit) return Not(noUnit);
            toldUnit = told.ValueKind == JsonValueKind.String ? told.GetString()!.Trim() : told.GetRawText();
        }

        return Message(found, toldUnit, at, captured);
    }

    private TelemetryText Message(
        JsonElement found, string toldUnit, DateTimeOffset at, IReadOnlyDictionary<string, string> captured)
    {
        if (chain.Of(captured) is not { } name) return Not($"The table of chains lacks the word '{chain.WordOf(captured)}'.");
        if (SignalFigure.Number(found, Row.Kind) is not { } number)
            return Not($"The value at {Row.ValuePath} is {SignalFigure.Raw(found)}, which is no figure of the chosen kind.");
        if (Row.Kind != TelemetryKind.RunningSwitch) number = SignalFigure.Scaled(number, Row.Scale, Row.Offset);
        if (toldUnit.Length == 0) return TelemetryText.Read(OwnMessage.Of(name, Row.Kind, number, at));
        return SignalUnit.Convert(number, toldUnit, Row.Kind) is { } converted
            ? TelemetryText.Read(OwnMessage.Of(name, Row.Kind, converted, at))
            : Not($"The unit '{toldUnit}' is not known here for this kind.");
    }

    private static Phrase? One(JsonPath path, JsonElement root, string text, out JsonElement found)
    {
        var all = path.In(root);
        found = all.Count > 0 ? all[0] : default;
        return all.Count switch
        {
            1 => null,
            0 => $"Nothing stands at {text}.",
            _ => $"{all.Count} values stand at {text}; it has to find one.",
        };
    }

    private static TelemetryText.NotUnderstood Not(Phrase reason) => new(reason);
}
