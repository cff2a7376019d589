using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>What a text of the pseudo-language says outside of its brackets.</summary>
internal static partial class OutsideBrackets
{
    /// <summary>
    /// The lines with two words in a row that stand in no brackets and are no data: a sentence, or a part of one.
    /// </summary>
    /// <param name="text">What a person reads.</param>
    /// <param name="data">What the plant's people wrote themselves, longest first.</param>
    public static IEnumerable<string> In(string text, IReadOnlyList<string> data)
    {
        for (var before = ""; before != text;) (before, text) = (text, Bracketed().Replace(text, " ¦ "));
        foreach (var line in text.Split('\n'))
        {
            var own = data.Aggregate(line, (rest, known) => rest.Replace(known, " ¦ ", StringComparison.Ordinal));
            if (Words().IsMatch(own)) yield return line.Trim();
        }
    }

    [GeneratedRegex("\u27E6[^\u27E6\u27E7]*\u27E7")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"\p{L}{2,} \p{Ll}{2,}")]
    private static partial Regex Words();
}
