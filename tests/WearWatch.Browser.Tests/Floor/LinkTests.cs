using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// A hoist's chain 5x15 with its maker's published limits: L1 15.7, L11 170.6, dm 4.5 mm (docs/references.md [74]).
/// </summary>
public sealed class LinkTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Three_measures_at_phone_size_are_judged_at_once_and_the_worst_heads_the_page()
    {
        var id = await HoistAsync("LINKS");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await phone.Page.ShowAsync($"#/chain/{id}/links");
        await phone.Page.GetByLabel("Which link, where").FillAsync("40 links above the hook");
        await phone.Page.GetByLabel("One link, inside, L1").FillAsync("15.2");
        await Assertions.Expect(phone.Page.Locator(".foot .verdict")).ToContainTextAsync("Not measured: length over links");
        await phone.Page.GetByLabel("Over 11 links").FillAsync("166.5");
        await phone.Page.GetByLabel("Crown d1").FillAsync("4.1");
        await phone.Page.GetByLabel("Crown d2").FillAsync("4.9");
        // (4.1 + 4.9)/2 = 4.50: the least that its maker allows.
        var verdict = phone.Page.Locator(".foot .verdict");
        await Assertions.Expect(verdict.Locator("p").First).ToHaveTextAsync(
            "Take out of use. Discard limit reached: Mean of two diameters 4.50 mm against 4.50 mm.");
        await phone.PictureAsync("floor-links-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("Take out of use");
        await phone.Page.Context.SetOfflineAsync(false);

        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        JsonElement kept = default;
        for (var wait = 0; wait < 100 && (kept.ValueKind != JsonValueKind.Array || kept.GetArrayLength() == 0); wait++)
        {
            await Task.Delay(200, Ct);
            kept = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/LINKS/link-measures", Ct);
        }

        Assert.Equal((4.1, 4.9), (kept[0].GetProperty("d1_mm").GetDouble(), kept[0].GetProperty("d2_mm").GetDouble()));
        var links = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/LINKS/links", Ct);
        Assert.Equal("take_out_of_use", links.GetProperty("condition").GetString());

        await phone.Page.GotoAsync($"{screen.Address}/chains/LINKS");
        var head = phone.Page.Locator(".headline");
        await Assertions.Expect(head).ToContainTextAsync("take out of use");
        await Assertions.Expect(head.Locator(".headline-links")).ToContainTextAsync(
            "Discard limit reached: mean of two diameters 4.50 mm");
        await Assertions.Expect(phone.Page.Locator(".measure-track-card")).ToHaveCountAsync(3);
        await phone.PictureAsync("chain-links-phone");
        Assert.Empty(await phone.BarriersAsync());
    }

    [Fact]
    public async Task At_the_desk_measures_are_entered_and_a_slip_is_withdrawn_with_its_reason()
    {
        await HoistAsync("DESK-LINKS");
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/chains/DESK-LINKS");
        await desk.Page.GetByText("Enter measures of the links").ClickAsync();
        await desk.Page.GetByLabel("Which link, where").FillAsync("at the hook");
        await desk.Page.GetByLabel("One link, inner length L1").FillAsync("1.59");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save the measures" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("1.59 mm is no length over one link")).ToBeVisibleAsync();
        await desk.Page.GetByLabel("One link, inner length L1").FillAsync("15.9");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save the measures" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".headline")).ToContainTextAsync("take out of use");
        await desk.PictureAsync("chain-links-desk");
        Assert.Empty(await desk.BarriersAsync());
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Withdraw", Exact = true }).ClickAsync();
        await desk.Page.GetByLabel("Why are they withdrawn?").FillAsync("read 15.9 for 15.2");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Withdraw them" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".headline")).Not.ToContainTextAsync("take out of use");
    }

    [Fact]
    public async Task The_page_of_the_gauge_judges_links_without_a_length_over_pitches()
    {
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/gauge?family=round_link&pitch_mm=15&link_diameter_new=5&one_link=15.28&over_links=169&d1=5&d2=5"
            + "&one_link_limit=15.7&over_links_limit=170.6&diameter_limit=4.5&table_source=manual&unit=mm");
        var head = desk.Page.Locator(".gauge-result");
        await Assertions.Expect(head).ToContainTextAsync("take out of use");
        // 169 mm over 11 links are 2.4 % longer, and the crowns are as new: it was pulled.
        await Assertions.Expect(head).ToContainTextAsync("the chain was overloaded");
        await desk.PictureAsync("gauge-links-desk");
        Assert.Empty(await desk.BarriersAsync());
    }

    private async Task<int> HoistAsync(string name)
    {
        var text = "chain,line,position,pitch_mm,family,lifts,link_use,link_diameter_mm,link_one_limit_mm,"
            + "link_several_limit_mm,link_diameter_limit_mm,link_table_source\n"
            + $"{name},Assembly,hoist {name},15,round_link,yes,powered_hoist,5,15.7,170.6,4.5,manual p. 12\n";
        await screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [new ImportFile("chains.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" }]);
        using var client = new HttpClient();
        var pack = await client.GetFromJsonAsync<JsonElement>(screen.Address + "/api/v1/floor/pack", Ct);
        return pack.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("chain").GetString() == name)
            .GetProperty("id").GetInt32();
    }
}
