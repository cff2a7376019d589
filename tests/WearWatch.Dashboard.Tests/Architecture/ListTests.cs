using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>Whatever lists things sorts by its heads: it is a ListTable, and a browser test sorts it.</summary>
public sealed partial class ListTests
{
    private const string Kit = "ListTable.razor";

    /// <summary>Tables of a page that are no lists of like things, each with why.</summary>
    private static readonly Dictionary<string, string> Others = new()
    {
        ["ColumnTable.razor"] = "a file as it is written",
        ["ComparePage.razor"] = "different measures of two sides",
        ["DataPage.razor"] = "the columns of a file in their order",
        ["ExaminationPaper.razor"] = "paper",
        ["GaugeResult.razor"] = "parts with their sum",
        ["JobCardPage.razor"] = "paper",
        ["LinkResult.razor"] = "different measures of one link",
        ["PlanFigures.razor"] = "three plans with the parts of their costs",
        ["PlanGrid.razor"] = "the board: lines and days",
        ["RecordPage.razor"] = "different constants",
        ["ReportPage.razor"] = "the same as on paper",
        ["RoundPanel.razor"] = "the order in which a person walks",
        ["RoundSheet.razor"] = "paper, in the order in which a person walks",
        ["ShutdownCalendar.razor"] = "a calendar",
        ["StudyResult.razor"] = "an analysis of variance",
        ["SwapWorkPanel.razor"] = "a form",
        ["TypeTable.razor"] = "different measures of types side by side",
        ["WhyHerePanel.razor"] = "parts with their sum",
        ["WorkPackagePage.razor"] = "paper",
    };

    private static readonly IReadOnlyList<(string File, string Text)> Sources =
        [.. SourceTree.Files(["dashboards"], ".razor").Select(f => (Path.GetFileName(f), File.ReadAllText(f)))];

    [Fact]
    public void A_table_that_repeats_rows_sorts_or_says_why_it_is_no_list()
    {
        var repeating = Sources.Where(s => s.File != Kit && Table().Matches(s.Text).Any(t => t.Value.Contains("@foreach")))
            .Select(s => s.File);
        Assert.Equal(Others.Keys.Order(StringComparer.Ordinal), repeating.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_list_is_sorted_by_a_browser_test()
    {
        var tests = string.Join('\n', SourceTree.Files(["tests"], ".cs")
            .Where(f => f.Contains("WearWatch.Browser.Tests", StringComparison.Ordinal)).Select(File.ReadAllText));
        var lists = Sources.Where(s => s.Text.Contains("<ListTable ", StringComparison.Ordinal))
            .SelectMany(s => List().Matches(s.Text).Select(_ => Path.GetFileNameWithoutExtension(s.File))).ToList();
        Assert.True(lists.Count > 30, $"only {lists.Count} lists");
        Assert.DoesNotContain(lists, list => !tests.Contains($"\"{list}\"", StringComparison.Ordinal));
    }

    /// <summary>Two lists of a page with one name would be sorted together.</summary>
    [Fact]
    public void Lists_that_may_share_a_page_have_names_of_their_own()
    {
        var names = Sources.SelectMany(s => List().Matches(s.Text).Select(m => Name().Match(m.Value)))
            .Where(m => m.Success && !m.Groups[1].Value.StartsWith('@')).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(names);
        Assert.Equal(names.Distinct().Count(), names.Count);
    }

    [GeneratedRegex("<table.*?</table>", RegexOptions.Singleline)]
    private static partial Regex Table();

    [GeneratedRegex("<ListTable .*?Context=\"[a-z]+\">", RegexOptions.Singleline)]
    private static partial Regex List();

    [GeneratedRegex(" Table=\"([^\"]*)\"")]
    private static partial Regex Name();
}
