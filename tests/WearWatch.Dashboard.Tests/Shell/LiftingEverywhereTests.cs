using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Shell;

/// <summary>
/// One of the demo mill's lifting chains is quarantined: every page and paper that names it says so beside it.
/// A new page that does not fails here.
/// </summary>
public sealed partial class LiftingEverywhereTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public static TheoryData<string> Pages =>
    [
        .. TypeGraph.Whole.Types.SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template)
            .Concat(["/labels", "/rounds/sheet", "/chains/{lifting}/lifting/sheet"])
            .Where(route => route is not ("/not-found" or "/error")).Order(StringComparer.Ordinal)
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_that_names_the_chain_says_what_stands_against_its_use(string route)
    {
        var name = mill.Samples["lifting"];
        var text = await mill.Client.GetStringAsync(AddressOf(route, name), Ct);
        var shown = Unseen().Replace(text, "");
        if (!Regex.IsMatch(shown, $@"\b{Regex.Escape(name)}\b")) return;
        Assert.Contains($"data-lifting=\"{name}\"", text, StringComparison.Ordinal);
        Assert.Contains("Out of use", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/chains/{name}")]
    [InlineData("/lifting")]
    [InlineData("/chains/{name}/master-data")]
    [InlineData("/chains/{name}/done")]
    [InlineData("/enter")]
    [InlineData("/labels")]
    public async Task The_pages_that_people_see_daily_do_name_it(string route) => Assert.Contains(
        $"data-lifting=\"{mill.Samples["lifting"]}\"",
        await mill.Client.GetStringAsync(
            AddressOf(route, mill.Samples["lifting"]) + route switch
            {
                "/enter" => "?chain=" + Uri.EscapeDataString(mill.Samples["lifting"]),
                _ => "",
            }, Ct),
        StringComparison.Ordinal);

    [Fact]
    public async Task The_phone_is_told_too_and_nothing_of_chains_that_do_not_lift()
    {
        using var pack = JsonDocument.Parse(await mill.Client.GetStringAsync("/api/v1/floor/pack", Ct));
        foreach (var chain in pack.RootElement.GetProperty("chains").EnumerateArray())
        {
            var lifting = chain.GetProperty("lifting");
            if (chain.GetProperty("chain").GetString() != mill.Samples["lifting"]) continue;
            Assert.Equal("out_of_use", lifting.GetProperty("verdict").GetString());
            Assert.Contains(lifting.GetProperty("faults").EnumerateArray(),
                fault => fault.GetString()!.StartsWith("Quarantined by", StringComparison.Ordinal));
            return;
        }

        Assert.Fail("The pack has no lifting chain.");
    }

    private string AddressOf(string route, string chain) => Parameter().Replace(route, parameter =>
    {
        var name = parameter.Groups[1].Value.ToLowerInvariant();
        return Uri.EscapeDataString(name is "chain" or "name" or "lifting" ? chain : mill.Samples[name]);
    });

    [GeneratedRegex(@"\{([^}]+)\}")]
    private static partial Regex Parameter();

    /// <summary>What nobody reads as the name of a chain: titles, choices, addresses.</summary>
    [GeneratedRegex(@"<title>.*?</title>|<option.*?</option>|<[^>]*>|<script.*?</script>", RegexOptions.Singleline)]
    private static partial Regex Unseen();
}
