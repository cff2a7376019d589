using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>The glossary is whole, and the crew's words are used.</summary>
public sealed class GlossaryTests
{
    /// <summary>Documents for those who use the program; those on its inside have words of their own.</summary>
    private static readonly string[] forUsers =
    [
        "README.md", "docs/technician.md", "docs/planner.md", "docs/engineer.md", "docs/oil.md", "docs/operating.md",
    ];

    [Fact]
    public void Every_notion_has_its_terms_its_standard_and_its_source()
    {
        Assert.True(Glossary.All.Count > 250);
        Assert.All(Glossary.All, g => Assert.DoesNotContain(
            "", new[] { g.Notion, g.English, g.Standard, g.German, g.Spanish, g.Source }));
        Assert.Empty(Glossary.All.GroupBy(g => g.Notion).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    [Fact]
    public void No_term_is_banned_for_another_notion()
    {
        var terms = Glossary.All.Select(g => g.English).ToHashSet(StringComparer.OrdinalIgnoreCase);
        Assert.All(Glossary.All.SelectMany(g => g.Banned), word => Assert.DoesNotContain(word, terms));
    }

    [Fact]
    public void No_page_phone_screen_print_or_command_has_a_word_that_the_crew_does_not_use()
    {
        var found = from file in SourceTree.Files(["src", "dashboards"], ".cs", ".razor", ".js")
                        // The names of a fleet model's columns are kept in its file; pages have words for them (DriverInput).
                    where !file.Contains("WearWatch.Learning", StringComparison.Ordinal)
                        && !file.EndsWith("DriverInput.cs", StringComparison.Ordinal)
                    from text in VisibleText.OfSource(file, File.ReadAllText(file))
                    from word in PlainWords.Banned(text)
                    select $"{Path.GetFileName(file)}: {word}";
        Assert.Empty(found.ToList());
    }

    [Fact]
    public void No_document_for_users_has_such_a_word()
    {
        var found = from name in forUsers
                    from line in File.ReadLines(Path.Combine(SourceTree.Root, name))
                    where !line.Contains('`', StringComparison.Ordinal)
                    from word in PlainWords.Banned(line)
                    select $"{name}: {word}";
        Assert.Empty(found.ToList());
    }

    [Fact]
    public void The_page_of_the_glossary_says_what_the_table_says()
    {
        var page = Path.Combine(SourceTree.Root, "docs", "glossary.md");
        var made = GlossaryPage.Of(Glossary.All);
        var draft = Path.Combine(AppContext.BaseDirectory, "glossary.md");
        File.WriteAllText(draft, made);
        Assert.True(File.Exists(page) && File.ReadAllText(page) == made, $"Copy {draft} to docs/glossary.md.");
    }

    [Fact]
    public void The_page_of_labels_has_every_label_with_its_standard()
    {
        var page = Path.Combine(SourceTree.Root, "docs", "labels.md");
        var made = LabelPage.Of(TextKeys.All.Keys);
        var draft = Path.Combine(AppContext.BaseDirectory, "labels.md");
        File.WriteAllText(draft, made);
        Assert.True(File.Exists(page) && File.ReadAllText(page) == made, $"Copy {draft} to docs/labels.md.");
    }
}
