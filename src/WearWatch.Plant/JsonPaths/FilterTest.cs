using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>What a filter asks of a place (RFC 9535, 2.3.5).</summary>
internal abstract record FilterTest
{
    private FilterTest()
    {
    }

    public abstract bool Holds(JsonElement current, JsonElement root);

    public sealed record Any(IReadOnlyList<FilterTest> Tests) : FilterTest
    {
        public override bool Holds(JsonElement current, JsonElement root) => Tests.Any(t => t.Holds(current, root));
    }

    public sealed record All(IReadOnlyList<FilterTest> Tests) : FilterTest
    {
        public override bool Holds(JsonElement current, JsonElement root) => Tests.All(t => t.Holds(current, root));
    }

    public sealed record Not(FilterTest Test) : FilterTest
    {
        public override bool Holds(JsonElement current, JsonElement root) => !Test.Holds(current, root);
    }

    /// <summary>Whether a query finds anything.</summary>
    public sealed record Exists(PathSteps Query) : FilterTest
    {
        public override bool Holds(JsonElement current, JsonElement root) => Query.Of(current, root).Any();
    }

    /// <summary>The functions <c>match</c>, of the whole text, and <c>search</c>, of any part of it.</summary>
    public sealed record Matches(FilterValue Text, FilterValue Pattern, bool Whole) : FilterTest
    {
        public override bool Holds(JsonElement current, JsonElement root) =>
            Text.Of(current, root) is { ValueKind: JsonValueKind.String } text
            && Pattern.Of(current, root) is { ValueKind: JsonValueKind.String } pattern
            && PathPattern.Of(pattern.GetString()!, Whole)?.IsMatch(text.GetString()!) == true;
    }

    /// <summary>A comparison: <c>==</c>, <c>!=</c>, <c>&lt;</c>, <c>&lt;=</c>, <c>&gt;</c>, <c>&gt;=</c>.</summary>
    public sealed record Compares(FilterValue Left, string Sign, FilterValue Right) : FilterTest
    {
        public override bool Holds(JsonElement current, JsonElement root)
        {
            var (left, right) = (Left.Of(current, root), Right.Of(current, root));
            return Sign switch
            {
                "==" => IsSame(left, right),
                "!=" => !IsSame(left, right),
                "<" => IsLess(left, right),
                "<=" => IsLess(left, right) || IsSame(left, right),
                ">" => IsLess(right, left),
                _ => IsLess(right, left) || IsSame(left, right),
            };
        }

        private static bool IsSame(JsonElement? left, JsonElement? right) =>
            left is { } a && right is { } b ? JsonElement.DeepEquals(a, b) : left is null && right is null;

        private static bool IsLess(JsonElement? left, JsonElement? right) => (left, right) switch
        {
            ({ ValueKind: JsonValueKind.Number } a, { ValueKind: JsonValueKind.Number } b) =>
                a.TryGetDecimal(out var x) && b.TryGetDecimal(out var y) ? x < y : a.GetDouble() < b.GetDouble(),
            // By Unicode's numbers, as UTF-8 sorts and UTF-16 does not.
            ({ ValueKind: JsonValueKind.String } a, { ValueKind: JsonValueKind.String } b) =>
                System.Text.Encoding.UTF8.GetBytes(a.GetString()!).AsSpan()
                    .SequenceCompareTo(System.Text.Encoding.UTF8.GetBytes(b.GetString()!)) < 0,
            _ => false,
        };
    }
}
