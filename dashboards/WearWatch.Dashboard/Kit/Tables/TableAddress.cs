using Microsoft.AspNetCore.WebUtilities;

namespace WearWatch.Dashboard.Kit.Tables;

/// <summary>The part of an address that says how its tables stand: by what they are sorted, which rows and columns they
/// show.</summary>
public static class TableAddress
{
    /// <summary>What the name of a table's order begins with.</summary>
    internal const string Sort = "sort-";

    /// <summary>What the name of a table's hidden columns begins with.</summary>
    internal const string Hide = "hide-";

    /// <summary>What the name of what is searched for in a table begins with.</summary>
    internal const string Find = "find-";

    private static readonly string[] Beginnings = [Sort, Hide, Find];

    /// <summary>A query string with how all tables stand from another one: a new filter leaves them as they are.</summary>
    public static string Keep(string from, string query) => QueryHelpers.AddQueryString(query, Of(from));

    /// <summary>What a query string says of how tables stand.</summary>
    public static IEnumerable<KeyValuePair<string, string?>> Of(string query) => Pairs(query).Where(p => IsOfTable(p.Key));

    /// <summary>Whether two query strings ask for the same but for how tables stand.</summary>
    public static bool IsAllThatDiffers(string query, string other) => Rest(query) == Rest(other);

    /// <summary>What a query string says under a name; empty for nothing.</summary>
    internal static string Read(string query, string name) =>
        QueryHelpers.ParseQuery(query).GetValueOrDefault(name).ToString();

    /// <summary>A query string with a value in place of what it says under a name; an empty one takes it out.</summary>
    internal static string With(string query, string name, string value)
    {
        var others = QueryHelpers.AddQueryString("", Without(query, name));
        return value.Length > 0 ? QueryHelpers.AddQueryString(others, name, value) : others;
    }

    /// <summary>What a query string asks for but under one name.</summary>
    internal static IEnumerable<KeyValuePair<string, string?>> Without(string query, string name) =>
        Pairs(query).Where(p => p.Key != name);

    private static bool IsOfTable(string name) => Beginnings.Any(b => name.StartsWith(b, StringComparison.Ordinal));

    private static string Rest(string query) => QueryHelpers.AddQueryString("", Pairs(query).Where(p => !IsOfTable(p.Key)));

    private static IEnumerable<KeyValuePair<string, string?>> Pairs(string query) => QueryHelpers.ParseQuery(query)
        .SelectMany(p => (IEnumerable<string?>)p.Value, (p, value) => KeyValuePair.Create(p.Key, value));
}
