using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Tests.Shell;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>
/// Every page in the language whose texts all stand in brackets: what stands outside is a text that no other language can say.
/// </summary>
public sealed class PseudoPagesTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
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
        var outside = OutsideBrackets.In(text, await DataAsync(mill)).Distinct().ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, $"outside-{route.Replace('/', '_')}.txt"), outside);
        Assert.True(outside.Count == 0, $"{route}: {string.Join("; ", outside.Take(8))}");
    }

    /// <summary>What the plant's people wrote themselves, longest first.</summary>
    internal static async Task<IReadOnlyList<string>> DataAsync(DemoMillHost mill)
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
}
