using System.Text.Json;

namespace WearWatch.Dashboard.Administration.Mappings;

/// <summary>A value in a message, with the JSONPath that finds it.</summary>
/// <param name="Path">The path.</param>
/// <param name="Value">The value as it stands there.</param>
public sealed record MessageLeaf(string Path, string Value)
{
    /// <summary>More than a person looks through.</summary>
    private const int Most = 40;

    /// <summary>The values of a message; none where it is no JSON.</summary>
    public static IReadOnlyList<MessageLeaf> In(ReadOnlyMemory<byte> payload)
    {
        try
        {
            using var json = JsonDocument.Parse(payload);
            return [.. Below("$", json.RootElement).Take(Most)];
        }
        catch (JsonException)
        {
            return [];
        }
    }

    private static IEnumerable<MessageLeaf> Below(string path, JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Below(path + Step(p.Name), p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany((item, i) => Below($"{path}[{i}]", item)),
        _ => [new MessageLeaf(path, element.GetRawText())],
    };

    private static string Step(string name) =>
        name.Length > 0 && !char.IsAsciiDigit(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '_')
            ? "." + name
            : $"['{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}']";
}
