using System.Text;
using System.Text.Json;
using WearWatch.Signals;

namespace WearWatch.Plant.Telemetry;

/// <summary>Reads a message as it arrived: understood, or not with the reason for a person.</summary>
public abstract record TelemetryText
{
    /// <summary>Longer payloads are not read.</summary>
    public const int LongestBytes = 256 * 1024;

    /// <summary>Passes that one message may hold per sensor.</summary>
    public const int MostPasses = 10_000;

    /// <summary>So long may one message of passes last, in microseconds.</summary>
    private const long LongestPassesMicroseconds = 3_600_000_000;

    private const int LongestId = 100;
    private const double LargestCounterH = 1e7;
    private const long LargestPulseCount = 1L << 53;

    private TelemetryText()
    {
    }

    /// <summary>It says what a message has to say.</summary>
    /// <param name="Message">What it says.</param>
    public sealed record Understood(TelemetryMessage Message) : TelemetryText;

    /// <summary>It does not; the reason is for a person.</summary>
    /// <param name="Reason">What is wrong with it.</param>
    public sealed record NotUnderstood(Phrase Reason) : TelemetryText;

    /// <summary>Reads a message.</summary>
    public static TelemetryText Read(Arrival arrival)
    {
        if (TelemetryTopic.Read(arrival.Topic) is not { } topic)
            return new NotUnderstood(
                $"The topic is not wearwatch/v1/PLANT/CHAIN/ and one of {string.Join(", ", TelemetryTopic.Words)}.");
        if (arrival.Payload.Length > LongestBytes) return new NotUnderstood($"Longer than {LongestBytes / 1024} KiB.");
        // PostgreSQL keeps no text with NUL in it: one message would hold up all that came with it.
        if (arrival.Payload.Span.IndexOf("\\u0000"u8) >= 0) return new NotUnderstood($"A text holds no NUL character.");
        try
        {
            using var json = JsonDocument.Parse(arrival.Payload);
            return Read(topic, new MessageFields(json.RootElement), arrival.Payload);
        }
        catch (InvalidOperationException)
        {
            return new NotUnderstood($"A text in it is not Unicode (UTF-8).");
        }
        catch (JsonException broken)
        {
            return new NotUnderstood($"Not JSON: line {broken.LineNumber + 1}, byte {broken.BytePositionInLine + 1}.");
        }
    }

    private static TelemetryText Read(TelemetryTopic topic, MessageFields fields, ReadOnlyMemory<byte> payload)
    {
        if (fields.Fault is { } broken) return new NotUnderstood(broken);
        var (id, at) = (fields.Text("id", LongestId), fields.Moment("at"));
        var (kind, value) = topic.Word switch
        {
            "running" => Running(fields),
            "length" => (TelemetryKind.Length, Length(fields)),
            "passes" => (TelemetryKind.Passes, Passes(fields)),
            "temperature" => (TelemetryKind.Temperature, fields.Number("temperature_c", -60, 400)),
            _ => (TelemetryKind.Oiling, fields.Number("amount_cm3", 0, 10_000)),
        };
        fields.End();
        return fields.Fault is { } fault
            ? new NotUnderstood(fault)
            : new Understood(new TelemetryMessage(
                id, topic.Chain, kind, at, value, kind is TelemetryKind.Length or TelemetryKind.Passes
                    ? Encoding.UTF8.GetString(payload.Span)
                    : null));
    }

    private static (TelemetryKind Kind, double Value) Running(MessageFields fields) =>
        fields.Has("on") ? (TelemetryKind.RunningSwitch, fields.Truth("on") ? 1 : 0)
        : fields.Has("pulses") ? (TelemetryKind.RunningPulses, fields.Whole("pulses", 0, LargestPulseCount))
        : (TelemetryKind.RunningCounter, fields.Number("counter_h", 0, LargestCounterH));

    private static double Length(MessageFields fields)
    {
        fields.Whole("pitches", 1, 100_000);
        fields.Optional("temperature_c", -60, 400);
        fields.Optional("uncertainty_mm", 0.0001, 1000);
        return fields.Number("length_mm", 0.1, 1e7);
    }

    private static double Passes(MessageFields fields)
    {
        fields.Optional("temperature_c", -60, 400);
        var first = fields.Rising("first_us", 3, MostPasses, LongestPassesMicroseconds);
        fields.Rising("second_us", 3, MostPasses, LongestPassesMicroseconds);
        return first.Count;
    }
}
