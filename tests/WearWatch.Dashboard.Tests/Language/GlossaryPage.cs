using System.Text;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>docs/glossary.md, made of docs/glossary.csv.</summary>
internal static class GlossaryPage
{
    /// <summary>The page: a table for each field.</summary>
    public static string Of(IReadOnlyList<Glossary> all)
    {
        var page = new StringBuilder(
            "# Glossary\n\nMade of [glossary.csv](glossary.csv), which has the sources and the words that the tests ban on screens.\n"
            + "`everyday` stands for a word of daily work. Terms of standards are recalled from memory where no source is noted.\n");
        foreach (var field in all.GroupBy(g => g.Notion.Split(':')[0]))
        {
            page.Append($"\n## {field.Key[..1].ToUpperInvariant()}{field.Key[1..]}\n\n")
                .Append("| notion | term | standard | Deutsch | espa\u00f1ol | not | certainty |\n|---|---|---|---|---|---|---|\n");
            foreach (var g in field)
            {
                string[] cells = [g.Notion[(field.Key.Length + 1)..].Trim(), g.English, g.Standard, g.German, g.Spanish,
                    g.NotCalled, Certainty(g.Source)];
                page.Append("| ").AppendJoin(" | ", cells.Select(c => c.Replace("|", "/", StringComparison.Ordinal))).Append(" |\n");
            }
        }

        return page.ToString();
    }

    private static string Certainty(string source) => source.StartsWith("from memory", StringComparison.Ordinal)
        ? "from memory"
        : (source.Contains("de: from memory", StringComparison.Ordinal), source.Contains("es: from memory", StringComparison.Ordinal))
            switch
            {
                (true, _) => "es with source",
                (_, true) => "de with source",
                _ => "with source",
            };
}
