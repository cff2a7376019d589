using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Browser.Tests;

/// <summary>
/// Controls by which something comes in: files, readings, messages, sensors, rounds. Each is used and its effect seen.
/// </summary>
public sealed class EntryControlTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Files_that_were_chosen_by_mistake_are_given_up_and_others_taken_in()
    {
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        var files = page.GetByLabel("Choose CSV or xlsx files, or drop them here");
        await desk.GoAsync("/import");
        await files.SetInputFilesAsync(PlantFiles.Write("MISTAKEN"));
        await Assertions.Expect(page.GetByText("What an import would do")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Choose other files" }).ClickAsync();
        await Assertions.Expect(page.GetByText("What an import would do")).ToHaveCountAsync(0);
        await files.SetInputFilesAsync(PlantFiles.Write("MEANT"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Take in" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "To the plant" })).ToBeVisibleAsync();
        await desk.GoAsync("/chains/MEANT-1");
        await Assertions.Expect(page.GetByText("longer than new").First).ToBeVisibleAsync();
        await desk.GoAsync("/chains/MISTAKEN-1");
        await Assertions.Expect(page.GetByText("No chain is called MISTAKEN-1")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_reading_that_was_to_be_withdrawn_is_kept_after_all_and_then_withdrawn()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "KEPT");
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/chains/KEPT-1");
        var row = page.GetByRole(AriaRole.Region, new() { Name = "Table of readings" })
            .GetByRole(AriaRole.Row).Filter(new() { HasText = "4,200 h" });
        await OpenAsync(row);
        await row.GetByRole(AriaRole.Button, new() { Name = "Keep it", Exact = true }).ClickAsync();
        await Assertions.Expect(row.GetByLabel("Why is it withdrawn?")).ToHaveCountAsync(0);
        await page.ReloadAsync();
        await desk.ConnectedAsync();
        await Assertions.Expect(page.GetByText("after 4,200 h").First).ToBeVisibleAsync();
        await OpenAsync(row);
        await row.GetByLabel("Why is it withdrawn?").FillAsync("another chain was measured");
        await row.GetByRole(AriaRole.Button, new() { Name = "Withdraw it", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("after 3,300 h").First).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);

        static async Task OpenAsync(ILocator row)
        {
            await row.Locator("summary").ClickAsync();
            await row.GetByRole(AriaRole.Button, new() { Name = "Withdraw it" }).ClickAsync();
        }
    }

    [Fact]
    public async Task The_pitches_of_a_reading_are_counted_up_and_down_by_their_buttons()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "STEPPED");
        await using var phone = await screen.OnPhoneAsync();
        await phone.GoAsync("/enter?chain=STEPPED-1");
        var pitches = phone.Page.GetByRole(AriaRole.Textbox, new() { Name = "Pitches", Exact = true });
        await pitches.FillAsync("48");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "One pitch more" }).TapAsync();
        await Assertions.Expect(pitches).ToHaveValueAsync("49");
        await Assertions.Expect(phone.Page.GetByText("new: 1,244.6 mm")).ToBeVisibleAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "One pitch less" }).TapAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "One pitch less" }).TapAsync();
        await Assertions.Expect(pitches).ToHaveValueAsync("47");
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_message_set_aside_is_let_in_once_its_chain_is_there_and_another_is_thrown_away()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        var page = desk.Page;
        var at = TimeProvider.System.GetUtcNow().UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", null);
        await host.Services.GetRequiredService<TelemetryDesk>().TakeAsync(
            [
                new Arrival("wearwatch/v1/plant/LATE-1/temperature",
                    Encoding.UTF8.GetBytes($$"""{"id":"t1","at":"{{at}}","temperature_c":31}""")),
                new Arrival("wearwatch/v1/plant/LATE-1/running", "{"u8.ToArray()),
            ], Ct);
        await desk.GoAsync("/data-sources");
        var strange = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "LATE-1/temperature" });
        var broken = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "LATE-1/running" });
        await strange.GetByRole(AriaRole.Button, new() { Name = "Let in" }).ClickAsync();
        await Assertions.Expect(strange.GetByRole(AriaRole.Alert)).ToContainTextAsync("Still not: ");
        await PlantFiles.TakeInAsync(host.Services, "LATE");
        await strange.GetByRole(AriaRole.Button, new() { Name = "Let in" }).ClickAsync();
        await Assertions.Expect(strange.GetByRole(AriaRole.Button)).ToHaveCountAsync(0);
        await broken.GetByRole(AriaRole.Button, new() { Name = "Throw away" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Every message could be used.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("Every message could be used.")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    // 762.4 mm are 30.02 pitches of 25.4 mm.
    [Fact]
    public async Task Two_sensors_are_measured_in_and_the_page_says_how_far_they_stand_apart()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "SENSED");
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/chains/SENSED-1/signals");
        await page.GetByLabel("Distance").FillAsync("20");
        await page.GetByLabel("Known within").FillAsync("0.1");
        await page.GetByLabel("Teeth of the driver").FillAsync("19");
        await page.GetByRole(AriaRole.Button, new() { Name = "Measured in now" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync(new Regex("At least [0-9]+ pitches"));
        await page.GetByLabel("Distance").FillAsync("762.4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Measured in now" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Kept. Days of passes")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("762.4 mm ± 0.1 mm apart, 30.02 pitches when new; 19 teeth drive."))
            .ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_chain_is_walked_to_earlier_on_the_round_and_stays_so()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await PlantFiles.TakeInAsync(host.Services, "WALK");
        await desk.GoAsync("/rounds");
        var earlier = desk.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Walk to WALK-[12] earlier$") });
        await Assertions.Expect(earlier).ToHaveCountAsync(2);
        var second = await earlier.Nth(1).GetAttributeAsync("aria-label");
        await earlier.Nth(1).ClickAsync();
        await Assertions.Expect(earlier.First).ToHaveAttributeAsync("aria-label", second!);
        await desk.GoAsync("/rounds");
        await Assertions.Expect(earlier.First).ToHaveAttributeAsync("aria-label", second!);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_chain_type_is_taken_away_from_a_comparison()
    {
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/types?compare=16B-1,16A-1,80-1");
        var names = desk.Page.Locator(".compare-name");
        await Assertions.Expect(names).ToHaveCountAsync(3);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "take away 16A-1" }).ClickAsync();
        await Assertions.Expect(names).ToHaveTextAsync(["16B-1", "80-1"]);
        await Assertions.Expect(desk.Page).Not.ToHaveURLAsync(new Regex("16A-1"));
        Assert.Empty(desk.Complaints);
    }
}
