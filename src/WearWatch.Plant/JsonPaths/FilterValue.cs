using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>A value within a filter; null is the standard's Nothing, which is no JSON value.</summary>
internal abstract record FilterValue
{
    private FilterValue()
    {
    }

    public abstract JsonElement? Of(JsonElement current, JsonElement root);

    public sealed record Literal(JsonElement Value) : FilterValue
    {
        public override JsonElement? Of(JsonElement current, JsonElement root) => Value;
    }

    /// <summary>What a query finds: the value where it is exactly one. The function <c>value</c> is the same.</summary>
    public sealed record Found(PathSteps Query) : FilterValue
    {
        public override JsonElement? Of(JsonElement current, JsonElement root) =>
            Query.Of(current, root).Take(2).ToList() is [var one] ? one : null;
    }

    /// <summary>The function <c>count</c>: how many places a query finds.</summary>
    public sealed record Count(PathSteps Query) : FilterValue
    {
        public override JsonElement? Of(JsonElement current, JsonElement root) =>
            JsonSerializer.SerializeToElement(Query.Of(current, root).Count());
    }

    /// <summary>The function <c>length</c>: characters of a text, elements of an array, members of an object.</summary>
    public sealed record Length(FilterValue Value) : FilterValue
    {
        public override JsonElement? Of(JsonElement current, JsonElement root) => Value.Of(current, root) switch
        {
            { ValueKind: JsonValueKind.String } text =>
                JsonSerializer.SerializeToElement(text.GetString()!.EnumerateRunes().Count()),
            { ValueKind: JsonValueKind.Array } array => JsonSerializer.SerializeToElement(array.GetArrayLength()),
            { ValueKind: JsonValueKind.Object } members => JsonSerializer.SerializeToElement(members.GetPropertyCount()),
            _ => null,
        };
    }
}
