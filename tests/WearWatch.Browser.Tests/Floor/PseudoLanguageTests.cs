using System.Text;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Every screen of the phone in the language whose texts all stand in brackets: what stands outside is a text that no other
/// language can say. What the pack holds is the server's to say, and left out.
/// </summary>
public sealed class PseudoLanguageTests(Screen screen)
{
    private const string Hoist = "chain,line,position,pitch_mm,family,lifts,link_use,link_diameter_mm,link_one_limit_mm,"
        + "link_several_limit_mm,link_diameter_limit_mm,link_table_source\n"
        + "PSEUDOHOIST,Assembly,hoist,15,round_link,yes,powered_hoist,5,15.7,170.6,4.5,manual p. 12\n";

    private readonly FloorPlant plant = new(screen);

    [Fact]
    public async Task No_screen_of_the_phone_has_a_text_that_no_language_can_say()
    {
        var (roller, _) = await plant.TakeInAsync("PSEUDO");
        await screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [new ImportFile("chains.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(Hoist))) { By = "Ina" }],
            ct: TestContext.Current.CancellationToken);
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.Context.AddCookiesAsync([new() { Name = "language", Value = "qps", Url = screen.Address }]);
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        var hoist = await page.EvaluateAsync<int>(
            "import('/floor/pack.js').then(p => p.loadPack()).then(p => p.chains.find(c => c.chain === 'PSEUDOHOIST').id)");
        var screens = await page.EvaluateAsync<string[]>(Screens, new[] { roller, hoist });
        Assert.True(screens.Length > 20, string.Join(' ', screens));
        List<string> outside = [];
        foreach (var hash in screens)
        {
            await page.ShowAsync(hash);
            foreach (var step in Steps)
            {
                await page.EvaluateAsync(step);
                outside.AddRange((await page.EvaluateAsync<string[]>(Outside)).Select(text => $"{hash} {text}"));
            }
        }

        Assert.Empty(outside.Distinct());
        Assert.NotEmpty(await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('nav a')].map(a => a.textContent).filter(text => text.includes('\u27E6'))
            """));
    }

    /// <summary>All of the phone's own table, at a chain that drives and one that lifts, and each kind of work.</summary>
    private const string Screens = """
        async ids => {
          const { ofChain, others } = await import('/floor/screens.js');
          const works = ['oiling', 'tensioned', 'shortened', 'replacement', 'sprocket_replaced', 'meter_reset'];
          return [
            ...Object.keys(others).map(where => (where === 'label' ? '#/label/1/ABCD2345' : `#/${where}`)), '#/chain/999999',
            ...ids.flatMap(id => [
              ...Object.keys(ofChain).map(what => `#/chain/${id}/${what}`), ...works.map(work => `#/chain/${id}/do?what=${work}`),
            ]),
          ];
        }
        """;

    /// <summary>As it opens; with everything folded out, the other tool and unit, and nonsense typed; kept, or refused.</summary>
    private static readonly string[] Steps =
    [
        "() => {}",
        """
        () => {
          for (const [value, kind] of [['caliper', 'tool'], ['in', 'unit']])
            document.querySelector(`input[name=${kind}][value=${value}]`)?.click();
          for (const found of document.querySelectorAll('.point input[type=radio]:last-of-type')) found.click();
          for (const input of document.querySelectorAll('#content input:not([type])')) {
            input.focus();
            input.value = input.inputMode === 'text' ? '' : '1.234x';
            input.dispatchEvent(new Event('input', { bubbles: true }));
          }
        }
        """,
        "() => { document.querySelector('#content .foot button.primary:not([disabled])')?.click(); }",
        """
        () => {
          for (const input of document.querySelectorAll('#content input:not([type])')) {
            input.value = input.id === 'pitches' ? '48' : input.id.startsWith('d') ? '4.2' : '1300';
            input.dispatchEvent(new Event('input', { bubbles: true }));
          }
        }
        """,
    ];

    /// <summary>Texts and readable attributes, without what stands in brackets, what the pack holds, units and names.</summary>
    private const string Outside = """
        async () => {
          const pack = await (await import('/floor/pack.js')).loadPack();
          // What is shown may be of the pack before: each that was seen counts.
          const seen = window.seen ??= new Set();
          const hold = value => {
            if (typeof value === 'string') seen.add(value);
            else if (value) Object.values(value).forEach(hold);
          };
          hold({ ...pack, fetched_at: null });
          const held = [...seen].sort((a, b) => b.length - a.length);
          const own = text => {
            for (let before = ''; before !== text;) [before, text] = [text, text.replace(/\u27E6[^\u27E6\u27E7]*\u27E7/g, ' ')];
            for (const data of held) if (data.length > 1) text = text.replaceAll(data, ' ');
            text = text.replace(/\d+ [A-Z][a-z]{2} \d{4}/g, ' ')
              .replace(/\b(mm|ml|in|h|kB|L1|d1|d2|C|x|WearWatch|floor)\b/g, ' ');
            return /\p{L}/u.test(text);
          };
          const texts = [document.title];
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
          for (let node = walk.nextNode(); node; node = walk.nextNode()) {
            if (node.nodeType === Node.TEXT_NODE) {
              // Each language is named in itself.
              if (!node.parentElement.closest('script, noscript, option[lang]')) texts.push(node.data);
            } else for (const name of ['aria-label', 'placeholder', 'title', 'alt'])
              if (node.hasAttribute(name)) texts.push(node.getAttribute(name));
          }

          return texts.filter(own);
        }
        """;
}
