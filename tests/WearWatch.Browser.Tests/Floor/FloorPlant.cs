using System.Net.Http.Json;
using System.Text.Json;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The plant behind the floor's tests.</summary>
/// <param name="screen">The browser, and the dashboard that tests share.</param>
/// <param name="own">A dashboard of the test's own, where the shared one would not do.</param>
internal sealed class FloorPlant(Screen screen, StillPlant? own = null)
{
    private DashboardHost Host => own?.Host ?? screen.Host;

    private string Address => own?.Address ?? screen.Address;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>A phone at a server that knows nobody.</summary>
    public async Task<Visit> PhoneAsync(bool dark = false)
    {
        var phone = await screen.OnPhoneAsync(dark, Address);
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(
            new() { ContentType = "application/json", Body = """{"id":null,"name":""}""" }));
        return phone;
    }

    /// <summary>Takes a small plant of a name in: the first chain's number, and the plant's mark.</summary>
    public async Task<(int Id, string Mark)> TakeInAsync(string name)
    {
        await PlantFiles.TakeInAsync(Host.Services, name);
        var pack = await PackAsync();
        return (Ids(pack)[name + "-1"], pack.GetProperty("plant").GetProperty("mark").GetString()!);
    }

    /// <summary>The numbers of the chains by their names.</summary>
    public async Task<IReadOnlyDictionary<string, int>> IdsAsync() => Ids(await PackAsync());

    private async Task<JsonElement> PackAsync()
    {
        using var client = new HttpClient();
        return await client.GetFromJsonAsync<JsonElement>(Address + "/api/v1/floor/pack", Ct);
    }

    private static Dictionary<string, int> Ids(JsonElement pack) => pack.GetProperty("chains").EnumerateArray()
        .ToDictionary(c => c.GetProperty("chain").GetString()!, c => c.GetProperty("id").GetInt32());

    /// <summary>The early date of a chain as the server tells it.</summary>
    public async Task<string> EarlyDateAsync(string chain, CancellationToken ct)
    {
        using var client = new HttpClient();
        var told = await client.GetFromJsonAsync<JsonElement>($"{Address}/api/v1/chains/{chain}/forecast", ct);
        return told.GetProperty("early_date").ToString();
    }

    /// <summary>A chain's readings as the server has them.</summary>
    public async Task<List<JsonElement>> ReadingsAsync(string chain)
    {
        using var client = new HttpClient();
        return [.. (await client.GetFromJsonAsync<JsonElement>($"{Address}/api/v1/chains/{chain}/readings", Ct))
            .EnumerateArray()];
    }

    /// <summary>A chain's readings once so many have come: the phone waits some seconds with a new one, for its undo.</summary>
    public async Task<List<JsonElement>> ReadingsAsync(string chain, int count)
    {
        var readings = await ReadingsAsync(chain);
        for (var wait = 0; wait < 200 && readings.Count < count; wait++)
        {
            await Task.Delay(300, Ct);
            readings = await ReadingsAsync(chain);
        }

        Assert.Equal(count, readings.Count);
        return readings;
    }
}
