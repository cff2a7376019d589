using System.Text;
using System.Text.Json;

namespace WearWatch.Plant.Telemetry;

/// <summary>
/// A sender may put several messages of one topic into one, as a JSON array: each with its own id, each taken or set aside for
/// itself.
/// </summary>
public static class SeveralMessages
{
    /// <summary>The single messages of an arrival. What is no array is one message, whatever it is.</summary>
    public static IEnumerable<Arrival> In(Arrival arrival)
    {
        if (arrival.Payload.Span.TrimStart(" \t\r\n"u8) is not [(byte)'[', ..]) return [arrival];
        try
        {
            using var all = JsonDocument.Parse(arrival.Payload);
            return all.RootElement.GetArrayLength() == 0
                ? [arrival]
                : [.. all.RootElement.EnumerateArray()
                    .Select(one => arrival with { Payload = Encoding.UTF8.GetBytes(one.GetRawText()) })];
        }
        catch (JsonException)
        {
            return [arrival]; // it is set aside as a whole, with the reason
        }
    }
}
