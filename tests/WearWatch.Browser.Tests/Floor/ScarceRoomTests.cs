using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Every screen of the phone's own table at 200 % text, and with the phone on its side: nothing is pushed sideways, the main
/// button can be reached, and what is being typed is never covered.
/// </summary>
public sealed class ScarceRoomTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(360, 640, 2.0)]
    [InlineData(844, 390, 1.0)]
    public async Task Every_screen_fits_and_its_main_button_is_reached(int width, int height, double textScale)
    {
        var name = $"SCARCE{width}";
        var (roller, _) = await plant.TakeInAsync(name);
        await screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [new ImportFile("chains.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(Hoist(name)))) { By = "Ina" }], ct: Ct);
        var hoist = (await plant.IdsAsync())[name + "-HOIST"];
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.SetViewportSizeAsync(width, height);
        await LargeTextAsync(page, textScale);
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        Assert.Equal(18 * textScale, await page.EvaluateAsync<double>(
            "() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize)"), 0.01);
        List<string> faults = [];
        foreach (var hash in await page.EvaluateAsync<string[]>(Screens, new[] { roller, hoist }))
        {
            await page.ShowAsync(hash);
            await phone.PictureAsync($"floor-scarce-{width}-{hash.Replace('/', '_').Replace('?', '_')}", whole: false);
            faults.AddRange(new[] { await phone.OverTheEdgeAsync() }.Concat(await page.EvaluateAsync<string[]>(Reach))
                .Where(fault => fault.Length > 0).Select(fault => $"{hash}: {fault}"));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.Empty(phone.Complaints);
    }

    /// <summary>As the owner of a phone sets it: the size of all text that names none.</summary>
    private static async Task LargeTextAsync(IPage page, double scale)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Page.enable");
        await session.SendAsync("Page.setFontSizes", new()
        {
            ["fontSizes"] = new Dictionary<string, object> { ["standard"] = (int)(16 * scale), ["fixed"] = (int)(13 * scale) },
        });
    }

    private static string Hoist(string name) =>
        "chain,line,position,pitch_mm,family,lifts,link_use,link_diameter_mm,link_one_limit_mm,link_several_limit_mm,"
        + "link_diameter_limit_mm,link_table_source\n"
        + $"{name}-HOIST,Assembly,hoist,15,round_link,yes,powered_hoist,5,15.7,170.6,4.5,manual p. 12\n";

    private const string Screens = """
        async ids => {
          const { ofChain, others } = await import('/floor/screens.js');
          const works = ['oiling', 'tensioned', 'shortened', 'replacement', 'sprocket_replaced', 'meter_reset'];
          return [
            ...Object.keys(others).filter(where => where !== 'label').map(where => `#/${where}`),
            ...ids.flatMap(id => [
              ...Object.keys(ofChain).map(what => `#/chain/${id}/${what}`), ...works.map(work => `#/chain/${id}/do?what=${work}`),
            ]),
          ];
        }
        """;

    /// <summary>
    /// The main button after scrolling to it, by what a finger would hit there; and each field that takes the focus, below what
    /// stays at the top and above the keys.
    /// </summary>
    private const string Reach = """
        async () => {
          const faults = [];
          const settled = () => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)));
          const isHit = element => {
            const { left, right, top, bottom } = element.getBoundingClientRect();
            return [[(left + right) / 2, (top + bottom) / 2], [left + 8, top + 8], [right - 8, bottom - 8]].every(([x, y]) => {
              const hit = document.elementFromPoint(x, y);
              return hit !== null && (element.contains(hit) || hit.closest('label')?.contains(element));
            });
          };
          const fields = 'input:not([type=radio], [type=checkbox], [type=file]), select, textarea';
          for (const details of document.querySelectorAll('#content details')) details.open = true;
          for (const field of document.querySelectorAll(`#content :is(${fields})`)) {
            if (!field.offsetParent) continue;
            field.focus();
            await settled();
            field.scrollIntoView({ block: 'nearest' });
            await settled();
            if (!isHit(field)) faults.push(`the field ${field.id || field.name || field.className} is covered`);
          }

          const main = document.querySelector('#content .foot .button.primary');
          if (main) {
            main.scrollIntoView({ block: 'center' });
            await settled();
            if (!isHit(main)) faults.push(`the button ${main.textContent} is not reached`);
          }

          scrollTo(0, 0);
          return faults;
        }
        """;
}
