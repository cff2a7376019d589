using System.Globalization;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A replacement of a chain that is hardly worn is asked about, at the desk and on the phone; nothing moves before a yes.
/// </summary>
public sealed class ReplacementQuestionTests(Screen screen, StillPlant still) : IClassFixture<StillPlant>
{
    private readonly FloorPlant plant = new(screen, still);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task At_the_desk_the_worn_neighbour_is_named_and_a_yes_records_it()
    {
        await TakeInAsync("WHICHDESK");
        var before = await plant.EarlyDateAsync("WHICHDESK-1", Ct);
        await using var desk = await screen.AtDeskAsync(address: still.Address);
        await desk.GoAsync("/chains/WHICHDESK-1/done");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Chain replaced" }).ClickAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Record: chain replaced" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Was it WHICHDESK-2?");
        await desk.PictureAsync("replacement-question-desk");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Equal((before, 0), (await plant.EarlyDateAsync("WHICHDESK-1", Ct), await EventsAsync("WHICHDESK-1")));

        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "It is right: save it" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("starts at 0 h")).ToBeVisibleAsync();
        Assert.Equal(1, await EventsAsync("WHICHDESK-1"));
        Assert.NotEqual(before, await plant.EarlyDateAsync("WHICHDESK-1", Ct));
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task On_the_phone_it_comes_back_to_be_checked_and_a_yes_sends_it_again()
    {
        await TakeInAsync("WHICHFLOOR");
        var before = await plant.EarlyDateAsync("WHICHFLOOR-1", Ct);
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.GotoAsync($"{still.Address}/floor/");
        await page.ReadyAsync();
        await page.ShowAsync($"#/chain/{(await plant.IdsAsync())["WHICHFLOOR-1"]}/do?what=replacement");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record: chain replaced" }).TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToBeVisibleAsync();
        await page.ShowAsync("#/kept");
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.GetByText("Was it WHICHFLOOR-2?")).ToBeVisibleAsync();
        await phone.PictureAsync("replacement-question-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        Assert.Equal((before, 0), (await plant.EarlyDateAsync("WHICHFLOOR-1", Ct), await EventsAsync("WHICHFLOOR-1")));

        await page.GetByRole(AriaRole.Button, new() { Name = "It is right: use it" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "It is right", Exact = true }).TapAsync();
        await Assertions.Expect(page.Locator(".entry.check")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".entry.sent")).ToHaveCountAsync(1);
        Assert.Equal(1, await EventsAsync("WHICHFLOOR-1"));
        Assert.NotEqual(before, await plant.EarlyDateAsync("WHICHFLOOR-1", Ct));
    }

    private async Task<int> EventsAsync(string chain)
    {
        using var client = new HttpClient();
        return (await client.GetFromJsonAsync<JsonElement>($"{still.Address}/api/v1/chains/{chain}/events", Ct)).GetArrayLength();
    }

    /// <summary>Two chains of a line with limits of 3 %: the first is worn by 0.4 %, the second by 2.6 %.</summary>
    private async Task TakeInAsync(string name)
    {
        var now = still.Host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        var readings = new StringBuilder("chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n");
        foreach (var (chain, percent) in ((int, double)[])[(1, 0.1), (2, 0.65)])
        {
            for (var visit = 0; visit < 5; visit++)
            {
                readings.Append(CultureInfo.InvariantCulture,
                    $"{name}-{chain},{now.AddDays(30 * visit - 125):yyyy-MM-dd'T'HH:mm:ss'Z'},{1000 + 600 * visit},tape,,40,")
                    .Append(CultureInfo.InvariantCulture, $"{1016 * (1 + percent * visit / 100):0.0},mm,20\n");
            }
        }

        var report = await still.Host.Services.GetRequiredService<FileImport>().ImportAsync(
        [
            File("chains.csv", $"chain,line,pitch_mm,limit_pct\n{name}-1,{name},25.4,3\n{name}-2,{name},25.4,3\n"),
            File("readings.csv", readings.ToString()),
        ]);
        Assert.Equal((0, 0), (report.Refused, report.Waiting));
    }

    private static ImportFile File(string name, string text) =>
        new(name, () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" };
}
