using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>A conveyor's pins go to 0.975 of their diameter, its tooth roots to 3 mm: docs/references.md [27].</summary>
public sealed class PartTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task On_the_phone_a_pin_is_held_against_its_limit_without_signal_and_sent_later()
    {
        var id = await ConveyorAsync("PHONE-PART");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await phone.Page.ShowAsync($"#/chain/{id}");
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Parts", Exact = true }).TapAsync();
        await phone.Page.GetByLabel("Part", new() { Exact = true }).SelectOptionAsync("tooth_root");
        await phone.Page.GetByLabel("Measured").FillAsync("2.4");
        // 2.4 of 3 mm are 80 % of the way.
        await Assertions.Expect(phone.Page.Locator(".foot .verdict")).ToHaveTextAsync(
            "2.40 mm against 3.00 mm: its renewal is planned.");
        await phone.Page.GetByLabel("Measured").FillAsync("3.1");
        await phone.Page.GetByLabel("Where").FillAsync("drive sprocket, tooth 1");
        await Assertions.Expect(phone.Page.Locator(".foot .verdict")).ToContainTextAsync(
            "Limit reached: 3.10 mm against 3.00 mm");
        await phone.PictureAsync("floor-parts-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("Limit reached");
        await phone.Page.Context.SetOfflineAsync(false);
        var parts = await PartsAsync("PHONE-PART");
        var told = parts.GetProperty("readings")[0];
        Assert.Equal(("tooth_root", 3.1, "drive sprocket, tooth 1"), (
            told.GetProperty("part").GetString(), told.GetProperty("mm").GetDouble(), told.GetProperty("place").GetString()));
        Assert.Equal("swap_now", parts.GetProperty("parts")[0].GetProperty("condition").GetString());
        await phone.Page.GotoAsync($"{screen.Address}/chains/PHONE-PART");
        await Assertions.Expect(phone.Page.Locator(".measure-track-card")).ToHaveCountAsync(1);
        await phone.PictureAsync("chain-parts-phone");
        Assert.Empty(await phone.BarriersAsync());
    }

    [Fact]
    public async Task At_the_desk_a_roller_gets_its_limit_its_notice_and_a_slip_is_withdrawn()
    {
        await ConveyorAsync("DESK-PART");
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/chains/DESK-PART");
        await desk.Page.GetByText("Enter a reading of a part").ClickAsync();
        await desk.Page.GetByRole(AriaRole.Combobox, new() { Name = "Part", Exact = true }).SelectOptionAsync("RollerDiameter");
        await desk.Page.GetByLabel("Measured, mm").FillAsync("47.2");
        await desk.Page.GetByLabel("Limit of your own").FillAsync("48");
        await desk.Page.GetByLabel("Source of the limit").FillAsync("manual p. 12");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save the reading" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("A limit needs the size when new beside it.")).ToBeVisibleAsync();
        await desk.Page.GetByLabel("Size when new").FillAsync("50");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save the reading" }).ClickAsync();
        var card = desk.Page.Locator(".measure-track-card");
        await Assertions.Expect(card).ToHaveCountAsync(1);
        await Assertions.Expect(card).ToContainTextAsync("limit reached");
        await Assertions.Expect(card).ToContainTextAsync("manual p. 12");
        await Assertions.Expect(desk.Page.Locator(".headline")).ToContainTextAsync("swap now");
        await Assertions.Expect(desk.Page.Locator(".headline-parts"))
            .ToContainTextAsync("Limit reached: roller diameter 47.2 mm");
        await desk.PictureAsync("chain-parts-desk");
        Assert.Empty(await desk.BarriersAsync());
        var withdraw = desk.Page.Locator(".part-readings").GetByRole(
            AriaRole.Button, new() { Name = "Withdraw", Exact = true });
        await withdraw.ClickAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Keep them" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByLabel("Why are they withdrawn?")).ToHaveCountAsync(0);
        await Assertions.Expect(card).ToHaveCountAsync(1);
        await withdraw.ClickAsync();
        await desk.Page.GetByLabel("Why are they withdrawn?").FillAsync("read 47.2 for 49.2");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Withdraw them" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".measure-track-card")).ToHaveCountAsync(0);
    }

    private async Task<JsonElement> PartsAsync(string chain)
    {
        using var client = new HttpClient();
        JsonElement parts = default;
        for (var wait = 0; wait < 200 && (wait == 0 || parts.GetProperty("readings").GetArrayLength() == 0); wait++)
        {
            await Task.Delay(300, Ct);
            parts = await client.GetFromJsonAsync<JsonElement>($"{screen.Address}/api/v1/chains/{chain}/parts", Ct);
        }

        return parts;
    }

    private async Task<int> ConveyorAsync(string name)
    {
        var text = $"chain,line,position,pitch_mm,pitches,family\n{name},Slats,conveyor {name},100,120,conveyor\n";
        await screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [new ImportFile("chains.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" }]);
        using var client = new HttpClient();
        var pack = await client.GetFromJsonAsync<JsonElement>(screen.Address + "/api/v1/floor/pack", Ct);
        return pack.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("chain").GetString() == name)
            .GetProperty("id").GetInt32();
    }
}
