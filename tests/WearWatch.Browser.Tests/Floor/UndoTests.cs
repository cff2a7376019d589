using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What was saved within the last ten seconds is taken back one by one, not the last alone.</summary>
public sealed class UndoTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_of_several_taps_within_ten_seconds_has_its_own_undo_and_the_others_are_sent()
    {
        string[] chains = ["UNDOFIRST-2", "UNDONEXT-2"];
        await plant.TakeInAsync("UNDOFIRST");
        await plant.TakeInAsync("UNDONEXT");
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.AddInitScriptAsync("localStorage.setItem('wearwatch-name', 'Uta');");
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        await page.ShowAsync("#/oil");
        foreach (var name in chains) await Lubricated(page, name).TapAsync();
        var undos = page.Locator(".undo");
        await Assertions.Expect(undos).ToHaveTextAsync([new Regex("^UNDONEXT-2: "), new Regex("^UNDOFIRST-2: ")]);
        await undos.Nth(1).GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).TapAsync();
        await Assertions.Expect(undos).ToHaveTextAsync([new Regex("^UNDONEXT-2: "), new Regex("^Undone: nothing was kept.$")]);
        await Assertions.Expect(Lubricated(page, "UNDOFIRST-2")).ToBeVisibleAsync();
        await Assertions.Expect(Lubricated(page, "UNDONEXT-2")).ToHaveCountAsync(0);
        await Assertions.Expect(undos).ToHaveCountAsync(0); // the time of each is over
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        Assert.Equal((0, 1), (await ToldAsync(chains[0]), await ToldAsync(chains[1])));
    }

    [Theory]
    [InlineData(360, "light")]
    [InlineData(390, "dark")]
    [InlineData(768, "sun")]
    public async Task Many_undos_leave_room_for_the_screen_below(int width, string look)
    {
        var (id, _) = await plant.TakeInAsync("UNDO" + width);
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.AddInitScriptAsync($"localStorage.setItem('wearwatch-floor-look', '{look}');");
        await page.SetViewportSizeAsync(width, 780);
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        await page.EvaluateAsync("""
            async id => {
              const [{ keepAll }, { offerUndo }] = await Promise.all([import('/floor/outbox.js'), import('/floor/undo.js')]);
              for (let n = 1; n < 12; n++) {
                offerUndo(await keepAll([{ kind: 'lubricate', path: '/api/v1/nowhere', chain: `C-${n}`, chainId: id,
                  words: 'Lubricated', body: {} }]), () => {});
              }
            }
            """, id);
        var room = (await page.Locator("#undo").BoundingBoxAsync())!;
        Assert.InRange(room.Height, 100, 780 * 0.45 + 1);
        await phone.PictureAsync($"floor-undo-{width}-{look}", whole: false);
        Assert.Equal("", await phone.OverTheEdgeAsync());
        Assert.Empty(await phone.BarriersAsync());
    }

    private static ILocator Lubricated(IPage page, string chain) =>
        page.GetByRole(AriaRole.Button, new() { Name = "Lubricated: " + chain, Exact = true });

    private async Task<int> ToldAsync(string chain)
    {
        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var events = await client.GetFromJsonAsync<JsonElement>($"/api/v1/chains/{chain}/events", Ct);
        return events.EnumerateArray().Count(e => e.GetProperty("told_by").GetString() == "Uta");
    }
}
