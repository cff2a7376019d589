using WearWatch.Signals;

namespace WearWatch.Plant.Telemetry;

/// <summary>The topics of telemetry: <c>wearwatch/v1/{plant}/{position}/{running|length|passes|temperature|oiling}</c>.</summary>
/// <remarks>
/// The position is the chain's name in the register. Topics cannot hold every character: <c>/</c>, <c>+</c>, <c>#</c> and
/// <c>%</c> in a name are written as in addresses, <c>%2F</c> for a slash.
/// </remarks>
/// <param name="Plant">The plant's level.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="Word">The last level, one of <see cref="Words"/>.</param>
public sealed record TelemetryTopic(string Plant, string Chain, string Word)
{
    private const string Root = "wearwatch/v1";

    /// <summary>The words of the last level.</summary>
    public static IReadOnlyList<string> Words { get; } = ["running", "length", "passes", "temperature", "oiling"];

    /// <summary>What an intake of a plant subscribes to.</summary>
    public static string FilterOf(string plant) => $"{Root}/{Escape(plant)}/+/+";

    /// <summary>The topic as it is published.</summary>
    public override string ToString() => $"{Root}/{Escape(Plant)}/{Escape(Chain)}/{Word}";

    /// <summary>Reads a topic; null when it is none of ours.</summary>
    public static TelemetryTopic? Read(string topic) => topic.Split('/') is ["wearwatch", "v1", var plant, var position, var word]
        && plant.Length > 0 && position.Length > 0 && Words.Contains(word, StringComparer.Ordinal)
            ? new TelemetryTopic(Uri.UnescapeDataString(plant), Uri.UnescapeDataString(position), word)
            : null;

    /// <summary>The topic's last level for a kind.</summary>
    public static string WordOf(TelemetryKind kind) => kind switch
    {
        TelemetryKind.Length => "length",
        TelemetryKind.Passes => "passes",
        TelemetryKind.Temperature => "temperature",
        TelemetryKind.Oiling => "oiling",
        _ => "running",
    };

    private static string Escape(string level) =>
        level.Replace("%", "%25", StringComparison.Ordinal).Replace("/", "%2F", StringComparison.Ordinal)
            .Replace("+", "%2B", StringComparison.Ordinal).Replace("#", "%23", StringComparison.Ordinal);
}
