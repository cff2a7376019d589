using System.Text.RegularExpressions;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>A condition is told by ConditionWords alone: no screen, answer, file, print or command draws a bare one.</summary>
public sealed partial class ConditionWordTests
{
    private const string Scripts = "dashboards/WearWatch.Dashboard/wwwroot/floor/words.js";

    [Fact]
    public void No_source_has_a_word_of_a_condition_but_the_one_place_of_them()
    {
        // "not known" stands for many a thing that is not known; of a condition it is found by its wire word.
        var words = ConditionWords.All.SelectMany(w => new[] { w.Words.ToString(), w.Wire, w.Style }).Distinct()
            .Except(["not known"]).ToList();
        Assert.All(
            Sources().Where(file => !file.EndsWith("ConditionWords.cs", StringComparison.Ordinal) && file != Full(Scripts)),
            file =>
            {
                var said = Quoted().Matches(File.ReadAllText(file)).Select(m => m.Value[1..^1]).ToHashSet();
                Assert.DoesNotContain(words, said.Contains);
            });
    }

    // Its name alone says nothing of whether the chain lifts; the words do.
    [Fact]
    public void No_source_writes_the_name_of_a_condition() => Assert.All(
        Sources(), file => Assert.DoesNotMatch(
            @"(FileWords|Tokens|TradeWords)\.Of\([^()]*\bCondition\b|\bCondition\.ToString\(|Tokens\.(All|Read)<Condition>",
            File.ReadAllText(file)));

    [Fact]
    public void The_phones_script_has_the_same_words()
    {
        var script = Regex.Replace(File.ReadAllText(Full(Scripts)), @"\[\s+t`", "[t`");
        Assert.All(ConditionWords.All, w => Assert.Contains($"  {w.Wire}: [t`{w.Words}`,", script, StringComparison.Ordinal));
    }

    [Fact]
    public void The_phones_style_sheet_has_no_green_for_a_chain_that_lifts()
    {
        var green = File.ReadAllLines(Full("dashboards/WearWatch.Dashboard/wwwroot/floor/floor.css"))
            .Where(line => line.Contains("var(--green)", StringComparison.Ordinal));
        Assert.All(green, line => Assert.All(
            ConditionWords.All.Where(w => w.HoldsLoad), w => Assert.DoesNotContain(w.Wire, line, StringComparison.Ordinal)));
    }

    private static IEnumerable<string> Sources() => SourceTree.Files(["src", "dashboards"], ".cs", ".razor", ".js");

    private static string Full(string path) => Path.Combine(SourceTree.Root, path);

    [GeneratedRegex("\"[^\"\n]*\"|'[^'\n]*'|`[^`\n]*`")]
    private static partial Regex Quoted();
}
