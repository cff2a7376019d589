using System.Text.Json;

namespace WearWatch.Plant.Sparkplug;

/// <summary>
/// What a host application says of itself under <c>spBv1.0/STATE/{host}</c>, retained; its will says the same with
/// <c>online</c> false and the same time.
/// </summary>
public static class SparkplugState
{
    /// <summary>The payload.</summary>
    public static byte[] Payload(bool isOnline, DateTimeOffset since) =>
        JsonSerializer.SerializeToUtf8Bytes(new { online = isOnline, timestamp = since.ToUnixTimeMilliseconds() });

    /// <summary>Whether a payload says that the host is offline.</summary>
    public static bool IsOffline(ReadOnlyMemory<byte> payload)
    {
        try
        {
            using var state = JsonDocument.Parse(payload);
            return state.RootElement is { ValueKind: JsonValueKind.Object } root
                && root.TryGetProperty("online", out var online) && online.ValueKind == JsonValueKind.False;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
