using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using WearWatch.Signals;

namespace WearWatch.Plant.Telemetry;

/// <summary>A foreign signal said as one of our own messages: all telemetry is read and judged by the same rules.</summary>
internal static class OwnMessage
{
    /// <summary>The message.</summary>
    /// <remarks>Its id follows from what it says: the same signal delivered or mapped again is the same message.</remarks>
    public static Arrival Of(string chain, TelemetryKind kind, double value, DateTimeOffset at)
    {
        var fields = new JsonObject
        {
            ["at"] = at.UtcDateTime.ToString("O"),
            [kind switch
            {
                TelemetryKind.RunningSwitch => "on",
                TelemetryKind.RunningPulses => "pulses",
                TelemetryKind.Temperature => "temperature_c",
                _ => "counter_h",
            }] = kind switch
            {
                TelemetryKind.RunningSwitch => value > 0,
                TelemetryKind.RunningPulses when double.IsInteger(value) && Math.Abs(value) < 1e18 => (long)value,
                _ => value,
            },
        };
        var topic = new TelemetryTopic("mapped", chain, TelemetryTopic.WordOf(kind)).ToString();
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(topic + fields.ToJsonString()));
        fields["id"] = "x" + Convert.ToHexStringLower(hash.AsSpan(0, 16));
        return new Arrival(topic, JsonSerializer.SerializeToUtf8Bytes(fields));
    }
}
