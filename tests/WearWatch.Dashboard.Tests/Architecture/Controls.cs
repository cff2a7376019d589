using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>
/// The controls of the desk's pages, found in their source: buttons and fields, by the name a person reads or hears.
/// </summary>
internal static partial class Controls
{
    private const int FewestLetters = 3;

    /// <summary>The value of an attribute; texts in T[...] hold quotation marks of their own.</summary>
    private const string Value = """"((?>(?:T\[(?:[^\]"]|"[^"]*")*\]|[^"])*))\x22"""";

    /// <summary>The controls, each with its file and the fixed part of its name.</summary>
    public static IReadOnlyList<(string File, string Name)> All { get; } =
    [
        .. SourceTree.Files(["dashboards"], ".razor").SelectMany(file => NamesIn(File.ReadAllText(file))
            .Select(name => (Path.GetFileName(file), name))).Distinct()
            .OrderBy(c => c.Item1, StringComparer.Ordinal).ThenBy(c => c.name, StringComparer.Ordinal),
    ];

    /// <summary>The names by which the browser tests reach for controls.</summary>
    public static IReadOnlyList<string> UsedByTests { get; } =
    [
        .. SourceTree.Files(["tests"], ".cs").Where(f => f.Contains("WearWatch.Browser.Tests", StringComparison.Ordinal))
            .SelectMany(f => Literal().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
            .Where(text => text.Length >= FewestLetters).Distinct(),
    ];

    /// <summary>
    /// Whether a browser test reaches for a control of this name: by all of it, or by a part that is long enough.
    /// </summary>
    public static bool IsUsed(string name) => UsedByTests.Any(used =>
        used.Contains(name, StringComparison.OrdinalIgnoreCase)
        || (used.Length >= Math.Min(6, name.Length) && name.Contains(used, StringComparison.OrdinalIgnoreCase)));

    private static IEnumerable<string> NamesIn(string razor)
    {
        foreach (Match button in Button().Matches(razor))
        {
            if (Label().Match(button.Groups[1].Value) is { Success: true } label) yield return Fixed(label.Groups[1].Value);
            else if (Fixed(button.Groups[2].Value) is { Length: > 0 } text) yield return text;
        }

        foreach (Match field in Field().Matches(razor)) yield return Fixed(field.Groups[1].Value);
        foreach (Match tick in Tick().Matches(razor)) yield return Fixed(tick.Groups[1].Value);
        foreach (Match labelled in Labelled().Matches(razor))
            yield return labelled.Groups[1].Value is ['@', ..] said ? Fixed(said) : labelled.Groups[1].Value;
        foreach (Match bare in Bare().Matches(razor))
        {
            if (Label().Match(bare.Value) is { Success: true } label) yield return Fixed(label.Groups[1].Value);
        }
    }

    /// <summary>
    /// The longest piece of a name that does not depend on data. What stands within a tag is no name, and what ends with … says
    /// that the button is at work.
    /// </summary>
    private static string Fixed(string written) => Quoted().Matches(Hole().Replace(Tag().Replace(written, ""), "{}"))
        .SelectMany(m => m.Groups[1].Value.Split("{}")).Select(piece => piece.Trim(' ', ':', ',', '.', '"'))
        .Where(piece => piece.Count(char.IsLetter) >= FewestLetters && !piece.EndsWith('…')).MaxBy(piece => piece.Length) ?? "";

    [GeneratedRegex(""""<button\b((?:[^>"]|"[^"]*(?:\["[^"]*"\][^"]*)*")*)>(.*?)</button>"""", RegexOptions.Singleline)]
    private static partial Regex Button();

    [GeneratedRegex("aria-label=\"" + Value)]
    private static partial Regex Label();

    [GeneratedRegex(""""<label class="field">\s*<span>(.*?)</span>"""", RegexOptions.Singleline)]
    private static partial Regex Field();

    [GeneratedRegex(""""<label class="tick">(.*?)</label>"""", RegexOptions.Singleline)]
    private static partial Regex Tick();

    [GeneratedRegex("<Labelled Name=\"" + Value)]
    private static partial Regex Labelled();

    [GeneratedRegex(""""<(?:input|select|textarea)\b(?:[^>"]|"[^"]*(?:\["[^"]*"\][^"]*)*")*>"""", RegexOptions.Singleline)]
    private static partial Regex Bare();

    [GeneratedRegex("\"([^\"]*)\"")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Hole();

    [GeneratedRegex(""""<[A-Za-z/](?:[^>"]|"[^"]*")*>"""")]
    private static partial Regex Tag();

    [GeneratedRegex("\"((?:[^\"\\\\]|\\\\.)*)\"")]
    private static partial Regex Literal();
}
