using System.Net.Http.Json;
using System.Text.Json;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The plant behind the floor's tests.</summary>
internal sealed class FloorPlant(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>A phone at a server that knows nobody.</summary>
    public async Task<Visit> PhoneAsync(bool dark = false)
    {
        var phone = await screen.OnPhoneAsync(dark);
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(
            new() { ContentType = "application/json", Body = """{"id":null,"name":""}""" }));
        return phone;
    }

    /// <summary>Takes a small plant of a name in: the first chain's number, and the plant's mark.</summary>
    public async Task<(int Id, string Mark)> TakeInAsync(string name)
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, name);
        using var client = new HttpClient();
        var pack = await client.GetFromJsonAsync<JsonElement>(screen.Address + "/api/v1/floor/pack", Ct);
        var chain = pack.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("chain").GetString() == name + "-1");
        return (chain.GetProperty("id").GetInt32(), pack.GetProperty("plant").GetProperty("mark").GetString()!);
    }

    /// <summary>The early date of a chain as the server tells it.</summary>
    public async Task<string> EarlyDateAsync(string chain, CancellationToken ct)
    {
        using var client = new HttpClient();
        var told = await client.GetFromJsonAsync<JsonElement>($"{screen.Address}/api/v1/chains/{chain}/forecast", ct);
        return told.GetProperty("early_date").ToString();
    }

    /// <summary>A chain's readings as the server has them.</summary>
    public async Task<List<JsonElement>> ReadingsAsync(string chain)
    {
        using var client = new HttpClient();
        return [.. (await client.GetFromJsonAsync<JsonElement>($"{screen.Address}/api/v1/chains/{chain}/readings", Ct))
            .EnumerateArray()];
    }
}
