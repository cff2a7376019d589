using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests;

/// <summary>
/// The crew's pages in German and Spanish, whose words are longer: nothing is cut, nothing stands over the edge.
/// </summary>
public sealed class LanguageLookTests(Screen screen)
{
    private static readonly (string Path, string Whole)[] pages =
    [
        ("/", ".weeks"), ("/chains", ".chain-grid .chain-link"), ("/chains/WORT-1", ".headline"), ("/enter", ".pick"),
        ("/enter?chain=WORT-1", ".entry-fields"), ("/chains/WORT-1/done", ".done-choices"), ("/notices", ".filters"),
        ("/rounds", ".page-head"), ("/lubrication", ".desk-tabs"), ("/lubrication/interval", ".panel form"),
        ("/lubrication/used", ".desk-tabs"), ("/lubrication/chains/WORT-1", ".rows"), ("/lifting", ".table"),
        ("/lifting/criteria", ".table"), ("/lifting/appointments", ".card-fields"), ("/chains/WORT-H/lifting", ".lifting-dates"),
    ];

    /// <summary>Every language but English, at the desk and on the phone.</summary>
    public static TheoryData<string, bool> Languages =>
        [.. Tongue.All.Skip(1).SelectMany(tongue => (IEnumerable<(string, bool)>)[(tongue.Code, false), (tongue.Code, true)])];

    [Theory]
    [MemberData(nameof(Languages))]
    public async Task Every_page_of_the_crew_stands_in_its_language(string code, bool onPhone)
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "WORT");
        await TakeInHoistAsync();
        await using var visit = onPhone ? await screen.OnPhoneAsync(locale: code) : await screen.AtDeskAsync(locale: code);
        List<string> faults = [];
        foreach (var (path, whole) in pages)
        {
            await visit.GoAsync(path);
            await visit.Page.Locator(whole).First.WaitForAsync();
            var name = path.Trim('/').Replace('/', '-').Replace("?chain=", "-", StringComparison.Ordinal);
            await visit.PictureAsync($"{code}-{(onPhone ? "phone" : "desk")}-{(name.Length > 0 ? name : "plant")}");
            Assert.Equal(code, await visit.Page.Locator("html").GetAttributeAsync("lang"));
            if (await visit.OverTheEdgeAsync() is { Length: > 0 } over) faults.Add($"{path}: {over}");
            faults.AddRange((await CutAsync(visit.Page)).Select(cut => $"{path}: cut: {cut}"));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.Empty(visit.Complaints);
    }

    /// <summary>Buttons, links that look like one, headings, choices and cells whose text does not fit into them.</summary>
    internal static async Task<IReadOnlyList<string>> CutAsync(IPage page) => await page.EvaluateAsync<string[]>("""
        () => [...document.querySelectorAll(
            'main :is(button, a.button, h1, h2, h3, th, .segments span, [class^="rz-column-title"], .rz-cell-data)')]
          .filter(e => e.clientWidth > 1 && !e.closest('.unseen') && e.scrollWidth > e.clientWidth + 1)
          .map(e => `${e.tagName} '${e.textContent.trim()}' ${e.scrollWidth} of ${e.clientWidth}`)
        """);

    private async Task TakeInHoistAsync()
    {
        var text = "chain,line,position,chain_type,family,pitch_mm,pitches\nWORT-H,Store,Truck 3,LL1622,leaf,25.4,100\n";
        await screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [new ImportFile("chains.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" }]);
    }
}
