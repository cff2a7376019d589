using System.Collections.Immutable;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Engineer.Workbench;

/// <summary>
/// What stands in a calculation's fields, as texts by name. It is the page's address, so that a calculation can be sent to a
/// colleague.
/// </summary>
/// <param name="Path">The page.</param>
/// <param name="Texts">The texts that are not empty.</param>
public sealed record BenchAddress(string Path, ImmutableSortedDictionary<string, string> Texts)
{
    /// <summary>A longer text nobody writes into a field.</summary>
    private const int LongestText = 500;

    /// <summary>Reads an address.</summary>
    public static BenchAddress Of(Uri address)
    {
        var texts = QueryHelpers.ParseQuery(address.Query)
            .Where(p => p.Value.ToString() is { Length: > 0 and <= LongestText })
            .ToImmutableSortedDictionary(p => p.Key, p => p.Value.ToString(), StringComparer.Ordinal);
        return new BenchAddress(address.AbsolutePath, texts);
    }

    /// <summary>Whether nothing was told yet.</summary>
    public bool IsBare => Texts.IsEmpty;

    public string Text(string name) => Texts.GetValueOrDefault(name, "");

    /// <summary>The same with another text; an empty one leaves it out.</summary>
    public BenchAddress With(string name, string? text) => this with
    {
        Texts = string.IsNullOrWhiteSpace(text) ? Texts.Remove(name) : Texts.SetItem(name, text.Trim()),
    };

    /// <summary>What is asked; a name that was not told falls back to what the person's units make of it.</summary>
    public Asked Ask(Func<string, string?>? otherwise = null) =>
        new(name => Texts.TryGetValue(name, out var text) ? text : otherwise?.Invoke(name));

    /// <summary>The query string that reads back as these texts.</summary>
    public string Query => QueryHelpers.AddQueryString("", Texts.Select(p => KeyValuePair.Create(p.Key, (string?)p.Value)));

    public override string ToString() => Path + Query;

    public bool Equals(BenchAddress? other) => other is not null && other.ToString() == ToString();

    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);
}
