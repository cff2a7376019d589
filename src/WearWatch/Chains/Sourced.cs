namespace WearWatch.Chains;

/// <summary>A number with who says so.</summary>
/// <param name="Value">The number; its unit stands in the name of what carries it.</param>
/// <param name="Source">Where it was read, such as <c>docs/references.md [26]</c>; or that it was recalled.</param>
/// <param name="IsVerified">Whether it was read at its source. One that was only recalled never governs silently.</param>
public readonly record struct Sourced(double Value, string Source, bool IsVerified)
{
    /// <summary>The source of a number that was recalled and not read.</summary>
    public const string Memory = "from memory, not verified";

    /// <summary>The numbered list of sources; its number follows in brackets.</summary>
    public const string List = "docs/references.md ";

    /// <summary>A place in the list by its number alone, such as [26]; what is in no list as it is.</summary>
    public static string InBrief(string source) =>
        source.StartsWith(List, StringComparison.Ordinal) ? source[List.Length..] : source;

    /// <summary>A number that was recalled and not read.</summary>
    public static Sourced FromMemory(double value) => new(value, Memory, IsVerified: false);

    /// <summary>What is computed from a number is as sure as the number.</summary>
    public Sourced Times(double factor) => this with { Value = Value * factor };

    /// <summary>What is computed from two numbers is as sure as the less sure of them.</summary>
    public Sourced Times(Sourced other) => new(
        Value * other.Value, IsVerified ? other.Source : Source, IsVerified && other.IsVerified);
}
