using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>Which children of a place are chosen (RFC 9535, 2.3).</summary>
internal abstract record Selector
{
    private Selector()
    {
    }

    public abstract IEnumerable<JsonElement> Of(JsonElement node, JsonElement root);

    public static IEnumerable<JsonElement> ChildrenOf(JsonElement node) => node.ValueKind switch
    {
        JsonValueKind.Array => node.EnumerateArray(),
        JsonValueKind.Object => node.EnumerateObject().Select(p => p.Value),
        _ => [],
    };

    /// <summary>The member of this name.</summary>
    public sealed record Named(string Name) : Selector
    {
        public override IEnumerable<JsonElement> Of(JsonElement node, JsonElement root) =>
            node.ValueKind == JsonValueKind.Object && node.TryGetProperty(Name, out var value) ? [value] : [];
    }

    /// <summary>All children.</summary>
    public sealed record Every : Selector
    {
        public override IEnumerable<JsonElement> Of(JsonElement node, JsonElement root) => ChildrenOf(node);
    }

    /// <summary>The element of this index; a negative one counts from the end.</summary>
    public sealed record At(long Index) : Selector
    {
        public override IEnumerable<JsonElement> Of(JsonElement node, JsonElement root)
        {
            if (node.ValueKind != JsonValueKind.Array) return [];
            var at = Index < 0 ? node.GetArrayLength() + Index : Index;
            return at >= 0 && at < node.GetArrayLength() ? [node[(int)at]] : [];
        }
    }

    /// <summary>Elements from a start to before an end, each so many further.</summary>
    public sealed record Slice(long? From, long? To, long Step) : Selector
    {
        public override IEnumerable<JsonElement> Of(JsonElement node, JsonElement root)
        {
            if (node.ValueKind != JsonValueKind.Array || Step == 0) yield break;
            long length = node.GetArrayLength();
            var (least, most) = Step > 0 ? (0L, length) : (-1L, length - 1);
            var from = Bound(From, Step > 0 ? 0 : length - 1);
            var to = Bound(To, Step > 0 ? length : -1);
            for (var i = from; Step > 0 ? i < to : i > to; i += Step) yield return node[(int)i];

            long Bound(long? told, long otherwise) =>
                told is not { } bound ? otherwise : Math.Clamp(bound < 0 ? length + bound : bound, least, most);
        }
    }

    /// <summary>The children for which a test holds.</summary>
    public sealed record Where(FilterTest Test) : Selector
    {
        public override IEnumerable<JsonElement> Of(JsonElement node, JsonElement root) =>
            ChildrenOf(node).Where(child => Test.Holds(child, root));
    }
}
