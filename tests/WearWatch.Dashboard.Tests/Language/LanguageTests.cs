using System.Text.Json;
using System.Text.RegularExpressions;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Each language has every text of the screens, and the screens have no text beside them.</summary>
public sealed partial class LanguageTests
{
    private const string Folder = "dashboards/WearWatch.Dashboard/Languages";

    /// <summary>All that are not English, whose texts are the keys.</summary>
    public static TheoryData<string> Foreign => [.. Tongue.All.Select(l => l.Code).Where(code => code != "en")];

    /// <summary>All.</summary>
    public static TheoryData<string> All => [.. Tongue.All.Select(l => l.Code)];

    [Fact]
    public void English_comes_first_and_German_and_Spanish_are_there()
    {
        Assert.Equal("en", Tongue.All[0].Code);
        Assert.Subset(Tongue.All.Select(l => l.Code).ToHashSet(), new HashSet<string> { "de", "es" });
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void No_text_is_left_without_a_translation(string code)
    {
        var texts = Tongue.Of(code)!.Texts;
        var missing = TextKeys.All.Where(k => HasWords(k.Key) && !texts.ContainsKey(k.Key)).Select(k =>
            $"{k.Value}: {k.Key}").ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, $"missing-{code}.txt"), missing);
        Assert.Empty(missing);
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void A_translation_has_the_holes_of_its_text(string code) =>
        Assert.Empty(Tongue.Of(code)!.Texts.Where(t => !Holes(t.Key).SequenceEqual(Holes(t.Value))).Select(t => t.Key));

    [Theory]
    [MemberData(nameof(Foreign))]
    public void A_text_stands_in_one_file_and_says_one_thing(string code)
    {
        var texts = FilesOf(code).SelectMany(Read).ToList();
        Assert.Empty(texts.GroupBy(t => t.Key).Where(g => g.Count() > 1).Select(g => g.Key));
        Assert.DoesNotContain(texts, t => string.IsNullOrWhiteSpace(t.Value));
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void No_translation_is_left_of_a_text_that_is_gone(string code)
    {
        var gone = FilesOf(code).Where(f => Path.GetFileName(f) != "phone.json").SelectMany(Read).Select(t => t.Key)
            .Where(key => !TextKeys.All.ContainsKey(key)).ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, $"gone-{code}.txt"), gone);
        Assert.Empty(gone);
    }

    [Fact]
    public void Every_text_that_is_asked_for_is_known_before_the_program_runs()
    {
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, "not-constant.txt"), TextKeys.NotConstant);
        Assert.Empty(TextKeys.NotConstant);
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Each_sentence_of_the_domain_is_said_in_each_language(string code)
    {
        var texts = Tongue.Of(code)!.Texts;
        Assert.Empty(TextKeys.OfTheDomain.Where(k => HasWords(k) && !texts.ContainsKey(k))
            .Select(k => $"{TextKeys.All[k]}: {k}").ToList());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Each_text_is_read_at_one_glance(string code)
    {
        var texts = code == "en" ? TextKeys.All.Keys : Tongue.Of(code)!.Texts.Values.AsEnumerable();
        Assert.Empty(texts.SelectMany(ReadingRules.FaultsOf).ToList());
    }

    [Fact]
    public void No_page_draws_a_text_that_no_language_can_say() => Assert.Empty(DrawnTexts.BesideTheLanguages());

    private static bool HasWords(string key) => Hole().Replace(key, "").Any(char.IsLetter);

    private static IEnumerable<string> Holes(string text) => Hole().Matches(text).Select(m => m.Value).Order().Distinct();

    private static IEnumerable<string> FilesOf(string code) =>
        Directory.EnumerateFiles(Path.Combine(SourceTree.Root, Folder, code), "*.json")
            .Where(f => Path.GetFileName(f) != "culture.json");

    private static IEnumerable<KeyValuePair<string, string>> Read(string file)
    {
        using var texts = JsonDocument.Parse(File.ReadAllText(file));
        return [.. texts.RootElement.EnumerateObject().Select(t => KeyValuePair.Create(t.Name, t.Value.GetString()!))];
    }

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Hole();
}
