using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Tests.Shell;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>
/// Every page in the language whose texts all stand in brackets: what stands outside is a text that no other language can say.
/// </summary>
public sealed partial class PseudoPagesTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public static TheoryData<string> Pages => EveryAddressTests.Pages;

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task No_page_says_anything_outside_the_languages(string route)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, EveryAddressTests.AddressOf(mill, route));
        request.Headers.Add("Cookie", "language=" + Tongue.Pseudo.Code);
        using var answer = await mill.Client.SendAsync(request, Ct);
        var html = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Contains($"lang=\"{Tongue.Pseudo.Code}\"", html, StringComparison.Ordinal);
        var text = VisibleText.OfPage(html);
        Assert.Contains('\u27E6', text);
        var outside = Outside(text, await DataAsync()).Distinct().ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, $"outside-{route.Replace('/', '_')}.txt"), outside);
        Assert.True(outside.Count == 0, $"{route}: {string.Join("; ", outside.Take(8))}");
    }

    /// <summary>Two words in a row that stand in no brackets and are no data: a sentence, or a part of one.</summary>
    private static IEnumerable<string> Outside(string text, IReadOnlyList<string> data)
    {
        for (var before = ""; before != text;) (before, text) = (text, Bracketed().Replace(text, " ¦ "));
        foreach (var line in text.Split('\n'))
        {
            var own = data.Aggregate(line, (rest, known) => rest.Replace(known, " ¦ ", StringComparison.Ordinal));
            if (Words().IsMatch(own)) yield return line.Trim();
        }
    }

    /// <summary>What the plant's people wrote themselves, longest first.</summary>
    private async Task<IReadOnlyList<string>> DataAsync()
    {
        await using var db = await mill.Get<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var cards = await db.Chains.AsNoTracking().ToListAsync(Ct);
        var plant = await db.Plants.AsNoTracking().Select(p => p.Name).ToListAsync(Ct);
        return
        [
            .. cards.SelectMany(c => new[] { c.Name, c.Line, c.Position, c.ChainType, c.OilGrade, c.LimitSetReason })
                .Concat(plant).Where(t => t.Length > 1).Distinct().OrderByDescending(t => t.Length),
        ];
    }

    [GeneratedRegex("\u27E6[^\u27E6\u27E7]*\u27E7")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"\p{L}{2,} \p{Ll}{2,}")]
    private static partial Regex Words();
}
