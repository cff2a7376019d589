using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Links;
using WearWatch.Plant.Files;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What the phone says of links without signal, against the domain's own verdict, over random measures.</summary>
public sealed class LinkVectorTests(Screen screen)
{
    private const int Entries = 3000;

    private const string Script = """
        async text => {
          const { judgeLinks } = await import('/floor/links-verdict.js');
          const { links, entries } = JSON.parse(text);
          return JSON.stringify(entries.map(entry => judgeLinks(links, entry, entry.tool).state));
        }
        """;

    // 12.7 mm (1/2 in) sling in the United States: four limits, the thinnest point among them. A row of a maker's table over 11.
    private static readonly LinkTable table = LinkTable.Of(
        new() { DiameterMm = 12.7, Use = LinkUse.Sling, SeveralLinksLimitMm = 430, Source = "a sling maker" }, 38.1);

    private static readonly LinkLimits limits = LinkLimits.For(table, holdsLoad: true, LawRegion.UnitedStates);

    [Fact]
    public async Task Three_thousand_random_visits_are_judged_alike_on_the_phone()
    {
        var chance = new Random(20261128);
        var entries = Enumerable.Range(0, Entries).Select(_ => Entry(chance)).ToList();
        var links = new
        {
            links = table.Links,
            marks = LinkMark.Of(table, limits).Select(m => new
            {
                measure = Word(m.Limit.Measure),
                name = LinkWords.Of(m.Limit.Measure).ToString(),
                grows = m.Limit.IsLength,
                new_mm = m.NewMm,
                plan_mm = m.PlanMm,
                out_mm = m.OutMm,
                out_by_tape_mm = m.OutByTapeMm,
                limit_mm = m.Limit.Mm,
            }),
        };
        await using var phone = await screen.OnPhoneAsync();
        await phone.Page.GotoAsync(screen.Address + "/floor/files");
        var told = await phone.Page.EvaluateAsync<string>(Script, JsonSerializer.Serialize(new
        {
            links,
            entries = entries.Select(e => new
            {
                one_link = e.OneLinkMm,
                several_links = e.SeveralLinksMm,
                d1 = e.D1Mm,
                d2 = e.D2Mm,
                tool = e.Tool == Tool.Tape ? "tape" : "caliper",
            }),
        }));
        var states = JsonSerializer.Deserialize<List<string>>(told)!;
        Assert.Equal(Entries, states.Count);
        var differing = entries.Zip(states).Where(pair => Oracle(pair.First) != pair.Second).Take(5).ToList();
        Assert.True(differing.Count == 0,
            string.Join('\n', differing.Select(d => $"{d.First}: {Oracle(d.First)}, phone {d.Second}")));
        Assert.All(["out", "plan", "within", "nothing"], state => Assert.Contains(state, states));
    }

    /// <summary>The worst measure's condition; stretch needs both at once and is the server's to say.</summary>
    private static string Oracle(MeasuredLinks entry) => LinkVerdict.Of(entry, table, limits).Worst?.Condition switch
    {
        Condition.SwapNow => "out",
        Condition.PlanASwap => "plan",
        Condition.WithinLimit => "within",
        _ => "nothing",
    };

    private static MeasuredLinks Entry(Random chance) => new()
    {
        Tool = chance.Next(2) == 0 ? Tool.Tape : Tool.Caliper,
        OneLinkMm = Maybe(chance, 38.1, 40.2),
        SeveralLinksMm = Maybe(chance, 419.1, 432),
        D1Mm = Maybe(chance, 12.8, 9.7), // near new more often than worn
        D2Mm = Maybe(chance, 12.8, 10.5),
    };

    private static double? Maybe(Random chance, double low, double high) =>
        chance.Next(3) == 0 ? null : Math.Round(low + (high - low) * Math.Pow(chance.NextDouble(), 3), 3);

    private static string Word(LinkMeasure measure) => FileWords.Of(measure);
}
