using System.Text;
using System.Text.RegularExpressions;
using WearWatch.Dashboard.Kit.Language;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>docs/labels.md: every label of the screens with the standard of its term, or "everyday".</summary>
internal static partial class LabelPage
{
    private const int MostWords = 4;

    // Longest first: "roller chain" and not "chain" says which standard a label follows.
    private static readonly (Regex Term, Glossary Notion)[] terms =
    [
        .. Glossary.All.OrderByDescending(g => g.English.Length).Select(g => (
            new Regex($@"(?<![\w-]){Regex.Escape(g.English)}(s|es)?(?![\w-])", RegexOptions.IgnoreCase), g)),
    ];

    /// <summary>The page.</summary>
    /// <param name="texts">All texts that the programs ask a language for.</param>
    public static string Of(IEnumerable<string> texts)
    {
        var (german, spanish) = (Tongue.Of("de")!.Texts, Tongue.Of("es")!.Texts);
        var page = new StringBuilder(
            "# Labels\n\n"
            + "Every label, heading and button, with the standard that has its term by the [glossary](glossary.md), "
            + "or `everyday`.\n"
            + "Made of the language files and the glossary by a test.\n\n"
            + "| label | Deutsch | espa\u00f1ol | standard |\n|---|---|---|---|\n");
        foreach (var label in texts.Where(IsLabel).Order(StringComparer.Ordinal))
            page.Append("| ").AppendJoin(" | ", new[]
            {
                label, german.GetValueOrDefault(label, ""), spanish.GetValueOrDefault(label, ""), StandardOf(label),
            }.Select(c => c.Replace("|", "/", StringComparison.Ordinal))).Append(" |\n");
        return page.ToString();
    }

    // A sentence ends with a stop, a text with a hole is no label by itself.
    private static bool IsLabel(string text) =>
        text.Split(' ').Length <= MostWords && text.Any(char.IsLetter) && !NoLabel().IsMatch(text);

    private static string StandardOf(string label) =>
        terms.FirstOrDefault(t => t.Term.IsMatch(label)).Notion?.Standard ?? "everyday";

    [GeneratedRegex(@"[.?!]$|[{}]|\n")]
    private static partial Regex NoLabel();
}
