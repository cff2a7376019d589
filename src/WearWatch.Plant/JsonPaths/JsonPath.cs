using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>A query that finds places in JSON, by RFC 9535, such as <c>$.drive['run hours'][-1]</c>.</summary>
public sealed class JsonPath
{
    private readonly PathSteps query;

    private JsonPath(PathSteps query) => this.query = query;

    /// <summary>Reads a query.</summary>
    /// <param name="text">The query.</param>
    /// <param name="fault">What is wrong with it and where; nothing to say when it is sound.</param>
    /// <returns>The query; null when it is none.</returns>
    public static JsonPath? Read(string text, out Phrase fault)
    {
        var reader = new PathReader(text);
        var query = reader.Whole();
        fault = reader.Fault ?? Phrase.None;
        return reader.Fault is null ? new JsonPath(query) : null;
    }

    /// <summary>What it finds, in the order of the standard.</summary>
    public IReadOnlyList<JsonElement> In(JsonElement root) => [.. query.Of(root, root)];
}
