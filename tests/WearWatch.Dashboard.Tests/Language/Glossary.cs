using WearWatch.Dashboard.Tests.Architecture;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>A notion of the trade as docs/glossary.csv has it.</summary>
/// <param name="Notion">What is meant, with its field in front.</param>
/// <param name="English">The term on screens.</param>
/// <param name="Standard">The standard that has the term, or "everyday".</param>
/// <param name="German">The German term.</param>
/// <param name="Spanish">The Spanish term.</param>
/// <param name="Banned">English words that no screen, print, mail or command may use for it.</param>
internal sealed record Glossary(
    string Notion, string English, string Standard, string German, string Spanish, IReadOnlyList<string> Banned)
{
    /// <summary>Where the terms of other languages are from, or "from memory".</summary>
    public required string Source { get; init; }

    /// <summary>What it is not called, by language.</summary>
    public required string NotCalled { get; init; }

    /// <summary>All rows.</summary>
    public static IReadOnlyList<Glossary> All { get; } = [.. Read()];

    private static IEnumerable<Glossary> Read()
    {
        using var rows = new CsvRowReader(File.OpenRead(Path.Combine(SourceTree.Root, "docs", "glossary.csv")));
        rows.Next();
        while (rows.Next())
        {
            var cells = rows.Fields;
            yield return new(
                cells[0], cells[1], cells[2], cells[3], cells[4], cells[6].Split('|', StringSplitOptions.RemoveEmptyEntries))
            {
                NotCalled = cells[5],
                Source = cells[7],
            };
        }
    }
}
