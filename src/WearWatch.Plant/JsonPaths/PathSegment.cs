using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>A step of a query: to the children that its selectors choose, or to those of all descendants too.</summary>
internal sealed record PathSegment(bool Descends, IReadOnlyList<Selector> Selectors)
{
    public IEnumerable<JsonElement> Of(JsonElement node, JsonElement root) =>
        (Descends ? WithDescendants(node) : [node]).SelectMany(n => Selectors.SelectMany(s => s.Of(n, root)));

    private static IEnumerable<JsonElement> WithDescendants(JsonElement node) =>
        Selector.ChildrenOf(node).SelectMany(WithDescendants).Prepend(node);
}
