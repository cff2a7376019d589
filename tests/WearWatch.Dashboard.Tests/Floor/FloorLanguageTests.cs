using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Extensions.FileProviders;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Technician.Floor;
using WearWatch.Dashboard.Tests.Architecture;
using WearWatch.Dashboard.Tests.Language;

namespace WearWatch.Dashboard.Tests.Floor;

/// <summary>The phone has its texts in every language, in files that it keeps.</summary>
public sealed class FloorLanguageTests : IAsyncLifetime
{
    private const string Dashboard = "dashboards/WearWatch.Dashboard";
    private readonly DashboardHost host = new();

    /// <summary>All that are not English, whose texts are the keys.</summary>
    public static TheoryData<string> Foreign => LanguageTests.Foreign;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static IReadOnlySet<string> Keys { get; } = FloorTexts.KeysIn(
        new PhysicalFileProvider(Path.GetFullPath(Path.Combine(SourceTree.Root, Dashboard, "wwwroot"))));

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public void The_texts_of_a_script_are_found_with_numbered_holes_also_inside_of_holes_and_not_in_comments() =>
        Assert.Equal(["{0} of {1}: {2}", "none", "kept", "{0}, done"], FloorTexts.KeysOf(
            """
            // t`of a comment`
            const words = t`${a} of ${f({ b: `{${c}` })}: ${d || t`none`}` + phrase`kept` + cut`not a text`;
              /** phrase`of a comment` */
              s.at`x`; say(counted(n, t`${{ percent: e }}, done`));
            """));

    [Fact]
    public void The_scripts_ask_for_texts_of_all_their_screens() => Assert.All(
        ["Save", "Today’s round", "{0} of {1} points found", "It is right: save it", "within limit"],
        k => Assert.Contains(k, Keys));

    [Theory]
    [MemberData(nameof(Foreign))]
    public void Every_text_of_the_phone_is_translated(string code) =>
        Assert.DoesNotContain(Keys, k => k.Any(char.IsLetter) && !Tongue.Of(code)!.Texts.ContainsKey(k));

    [Theory]
    [MemberData(nameof(Foreign))]
    public void No_translation_of_the_phone_is_left_of_a_text_that_is_gone(string code)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(
            Path.Combine(SourceTree.Root, Dashboard, "Languages", code, "phone.json")));
        Assert.DoesNotContain(file.RootElement.EnumerateObject().Select(t => t.Name),
            k => !Keys.Contains(k) && !TextKeys.All.ContainsKey(k));
    }

    [Fact]
    public async Task A_phone_keeps_every_language_whatever_its_own_is()
    {
        using var client = host.CreateClient();
        var files = await client.GetFromJsonAsync<JsonElement>("/floor/files", Ct);
        var kept = files.GetProperty("files").EnumerateArray().Select(f => f.GetString()).ToList();
        foreach (var code in Tongue.All.Select(l => l.Code))
        {
            Assert.Contains($"/floor/language/{code}.json", kept);
            var language = await client.GetFromJsonAsync<JsonElement>($"/floor/language/{code}.json", Ct);
            Assert.Equal(code, language.GetProperty("code").GetString());
            Assert.Equal(code == "en" ? 0 : Keys.Count(k => Tongue.Of(code)!.Text(k) != k),
                language.GetProperty("texts").EnumerateObject().Count());
        }

        var german = await client.GetFromJsonAsync<JsonElement>("/floor/language/de.json", Ct);
        Assert.Equal(",", german.GetProperty("decimal_sign").GetString());
        Assert.Equal("Speichern", german.GetProperty("texts").GetProperty("Save").GetString());
        // Of all texts of the desk the phone gets none.
        Assert.False(german.GetProperty("texts").TryGetProperty("Search the chains", out _));
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync("/floor/language/xx.json", Ct)).StatusCode);
    }
}
