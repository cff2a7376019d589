using System.Text;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Tests.Telemetry;

/// <summary>Messages with defaults, so that a test states only what it is about.</summary>
internal static class Sent
{
    private static int made;

    public static string NextId => $"m{Interlocked.Increment(ref made)}";

    public static Arrival Raw(string topic, string payload) => new(topic, Encoding.UTF8.GetBytes(payload));

    /// <summary>A message of a chain: the fields after id and time, such as <c>"temperature_c":20</c>.</summary>
    public static Arrival Of(string word, string fields, string chain = "C1", DateTimeOffset? at = null, string? id = null) =>
        Raw(
        $"wearwatch/v1/plant/{chain}/{word}",
        $$"""{"id":"{{id ?? NextId}}","at":"{{(at ?? TestPlant.Start).UtcDateTime:yyyy-MM-dd'T'HH:mm:ss.fff'Z'}}",{{fields}}}""");

    public static Arrival Temperature(double celsius = 20, string chain = "C1", DateTimeOffset? at = null, string? id = null) =>
        Of("temperature", FormattableString.Invariant($"\"temperature_c\":{celsius}"), chain, at, id);
}
