using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Twenty readings without signal, the phone goes out, comes back, sends, and the server goes out while it takes them.
/// </summary>
public sealed class LostPowerTests(Screen screen)
{
    private const int Readings = 20;
    private const int First = 5000;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Twenty_readings_survive_a_killed_browser_and_a_killed_server_once_each_and_in_order()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        var id = (await server.TakeInAsync(client, "POWER")).Single(c => c.Name == "POWER-1").Id;
        await using var phone = new RoughPhone(screen, server.Address, "floor");
        await phone.StartAsync();
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        for (var i = 0; i < Readings / 2; i++) await EnterAsync(phone.Page, id, i);
        await phone.KillAsync();

        await phone.StartAsync(offline: true);
        var page = phone.Page;
        for (var i = Readings / 2; i < Readings; i++) await EnterAsync(page, id, i);
        await page.ShowAsync("#/kept");
        // The browser may have sent some by itself while it was starting; none is missing.
        await Assertions.Expect(page.Locator(".entry")).ToHaveCountAsync(Readings);

        await page.Context.SetOfflineAsync(false);
        int stored;
        do stored = (await ReadAsync(client)).Count;
        while (stored < 3);
        await server.KillAsync();
        await server.StartAsync();
        var left = Readings - (await ReadAsync(client)).Count;
        Assert.True(left > 0, "The server had taken all of them before it was killed: the test proves nothing then.");
        await page.WaitForFunctionAsync(
            "() => document.getElementById('kept').textContent === 'Kept 0'");
        await page.ShowAsync("#/kept");
        await Assertions.Expect(page.Locator(".entry[data-state=sent]")).ToHaveCountAsync(Readings);
        Assert.Equal(Enumerable.Range(First, Readings).Select(h => (double)h), await ReadAsync(client));
    }

    private static Task EnterAsync(IPage page, int chainId, int i) =>
        page.MeasureAsync(chainId, (First + i).ToString(CultureInfo.InvariantCulture), "1234.5");

    /// <summary>The counters of what was entered, by the order of their rows.</summary>
    private static async Task<List<double>> ReadAsync(HttpClient client)
    {
        var all = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/POWER-1/readings", Ct);
        return [.. all.EnumerateArray().OrderBy(r => r.GetProperty("id").GetInt64())
            .Select(r => r.GetProperty("counter_h").GetDouble()).Where(h => h >= First)];
    }
}
