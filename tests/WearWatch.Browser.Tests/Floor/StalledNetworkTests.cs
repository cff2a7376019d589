using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// A network that takes a request and never answers: the worst there is, since nothing says that it is not there.
/// </summary>
public sealed class StalledNetworkTests(Screen screen)
{
    /// <summary>Requests have no time limit any more: whatever waits for an answer that never comes waits for ever.</summary>
    private const string PatienceNeverEnds =
        "if (sessionStorage.patient) AbortSignal.timeout = () => new AbortController().signal";

    private const int Attempts = 3;
    private readonly FloorPlant plant = new(screen);

    /// <summary>The shortest of some times in which the floor opens and each screen is drawn, in milliseconds.</summary>
    private static async Task<Dictionary<string, double>> TimesAsync(IPage page, string[] screens)
    {
        var opened = new List<double>();
        for (var i = 0; i < Attempts; i++)
        {
            await page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });
            await page.WaitForFunctionAsync("() => performance.getEntriesByName('shown').length > 0");
            opened.Add(await page.EvaluateAsync<double>("() => performance.getEntriesByName('shown')[0].startTime"));
        }

        var times = new Dictionary<string, double> { ["the floor opens"] = opened.Min() };
        foreach (var hash in screens)
            times[hash] = (await page.EvaluateAsync<double[]>(Drawing, new object[] { hash, Attempts })).Min();
        return times;
    }

    [Fact]
    public async Task The_floor_opens_and_draws_each_screen_without_an_answer()
    {
        var (id, mark) = await plant.TakeInAsync("STALL");
        await using var network = new WeakNetwork(screen.Address);
        await using var phone = await screen.OnPhoneAsync(network: network.Between);
        await phone.Page.GotoAsync(screen.Address + "/floor/");
        await phone.Page.ReadyAsync();
        var screens = await phone.Page.EvaluateAsync<string[]>("""
            async ([id, mark]) => {
              const { ofChain, others } = await import('/floor/screens.js');
              return [...Object.keys(others).filter(s => s !== 'label').map(s => `#/${s}`), `#/label/${id}/${mark}`,
                ...Object.keys(ofChain).map(s => `#/chain/${id}/${s}`)];
            }
            """, new object[] { id, mark });
        var good = await TimesAsync(phone.Page, screens);
        network.Signal = Signal.Hangs;
        await phone.Page.AddInitScriptAsync(PatienceNeverEnds);
        await phone.Page.EvaluateAsync("sessionStorage.patient = 'yes'");
        var stalled = await TimesAsync(phone.Page, screens);
        foreach (var (what, ms) in stalled)
            TestContext.Current.TestOutputHelper!.WriteLine($"{what}: {ms:0} ms, with a good network {good[what]:0} ms");

        await phone.Page.EvaluateAsync("sessionStorage.removeItem('patient')");
        await phone.Page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });
        await phone.Page.MeasureAsync(id, "5000", "1234.5");
        await Assertions.Expect(phone.Page.GetByText("No signal: kept on this phone").First).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.Locator("#kept")).ToHaveTextAsync("Kept 1");
        await phone.PictureAsync("floor-stalled-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        network.Signal = Signal.Good;
        await Assertions.Expect(phone.Page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        Assert.Equal(6, (await plant.ReadingsAsync("STALL-1")).Count);
    }

    /// <summary>Milliseconds from the tap on a way to its screen, several times from another one.</summary>
    private const string Drawing = """
        async ([hash, attempts]) => {
          const times = [];
          const drawn = to => new Promise(done => {
            performance.clearMarks('shown');
            const began = performance.now();
            location.hash = to;
            const look = () => performance.getEntriesByName('shown').length > 0
              ? done(performance.getEntriesByName('shown')[0].startTime - began) : setTimeout(look, 5);
            look();
          });
          for (let i = 0; i < attempts; i++) {
            await drawn(`#/find?${i}${Math.random()}`);
            times.push(await drawn(hash));
          }
          return times;
        }
        """;
}
