using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>Who says so, for people: a citation is the same in every language, the few words beside citations are not.</summary>
public static class SourceWords
{
    private static readonly Dictionary<string, Phrase> words = new(StringComparer.Ordinal)
    {
        ["common practice"] = $"common practice",
        [Sourced.Memory] = $"from memory, not verified",
        ["worked out"] = $"worked out",
        ["set by the plant"] = $"set by the plant",
        ["stated by the plant"] = $"stated by the plant",
    };

    /// <summary>The source in words; see <see cref="Sourced.Source"/>. Several stand between semicolons.</summary>
    public static Phrase Of(string source) => Of(source, Phrase.Verbatim);

    /// <summary>The source in words.</summary>
    /// <param name="source">One or several, between semicolons.</param>
    /// <param name="cited">How a citation is said.</param>
    public static Phrase Of(string source, Func<string, Phrase> cited) =>
        Phrase.Join("; ", source.Split("; ").Select(part => words.GetValueOrDefault(part) ?? cited(part)));
}
