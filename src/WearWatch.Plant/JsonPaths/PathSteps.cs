using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>The steps of a query, from the root or from the place that a filter looks at.</summary>
internal sealed record PathSteps(bool FromRoot, IReadOnlyList<PathSegment> Segments)
{
    /// <summary>Whether it finds one place at most (RFC 9535, 2.3.5.1): then its value can be compared.</summary>
    public bool IsSingular => Segments.All(s => !s.Descends && s.Selectors is [Selector.Named or Selector.At]);

    public IEnumerable<JsonElement> Of(JsonElement current, JsonElement root) =>
        Segments.Aggregate<PathSegment, IEnumerable<JsonElement>>(
            [FromRoot ? root : current], (nodes, segment) => nodes.SelectMany(n => segment.Of(n, root)));
}
