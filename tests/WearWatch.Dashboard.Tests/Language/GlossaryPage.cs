using System.Text;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>docs/glossary.md, made of docs/glossary.csv.</summary>
internal static class GlossaryPage
{
    /// <summary>The page: a table for each field.</summary>
    public static string Of(IReadOnlyList<Glossary> all)
    {
        var page = new StringBuilder(
            "# Glossary\n\n"
            + "Made of [glossary.csv](glossary.csv), which has the sources and the words that the tests ban on screens.\n"
            + "`everyday` stands for a word of daily work. "
            + "Terms of standards are recalled from memory where no source is noted.\n");
        foreach (var field in all.GroupBy(g => g.Notion.Split(':')[0]))
        {
            page.Append($"\n## {field.Key[..1].ToUpperInvariant()}{field.Key[1..]}\n\n")
                .Append("| notion | term | standard | Deutsch | espa\u00f1ol | not | certainty |\n")
                .Append("|---|---|---|---|---|---|---|\n");
            foreach (var g in field)
            {
                string[] cells = [g.Notion[(field.Key.Length + 1)..].Trim(), g.English, g.Standard, g.German, g.Spanish,
                    g.NotCalled, Certainty(g.Source)];
                var written = cells.Select(c => c.Replace("|", "/", StringComparison.Ordinal));
                page.Append("| ").AppendJoin(" | ", written).Append(" |\n");
            }
        }

        return page.ToString();
    }

    private static string Certainty(string source)
    {
        if (source.StartsWith("from memory", StringComparison.Ordinal)) return "from memory";
        if (source.Contains("de: from memory", StringComparison.Ordinal)) return "es with source";
        return source.Contains("es: from memory", StringComparison.Ordinal) ? "de with source" : "with source";
    }
}
