using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>How many taps the commonest work takes, digits and all, from a position's page to what is kept.</summary>
public sealed class TapCountTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    [Fact]
    public async Task Measuring_by_tape_takes_twelve_taps_by_caliper_fourteen_and_lubricating_two_from_the_chain_or_the_start()
    {
        var (id, _) = await plant.TakeInAsync("TAPS");
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.AddInitScriptAsync(
            "window.taps = 0; addEventListener('click', e => { if (e.isTrusted) window.taps++; }, true);");
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        await page.ShowAsync($"#/chain/{id}");

        await StartAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Still 4200 h" }).TapAsync();
        await page.TapDigitsAsync("1232.5");
        await SaveAsync("Save");
        await EndAsync("tape, counter as last", most: 12);

        await StartAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).TapAsync();
        await page.GetByLabel("Hour counter").TapAsync();
        await page.TapDigitsAsync("4201");
        await page.GetByRole(AriaRole.Button, new() { Name = "Next field" }).TapAsync();
        await page.TapDigitsAsync("1232.5");
        await SaveAsync("Save");
        await EndAsync("tape, counter typed", most: 14);

        // Over the rollers of 10 pitches of 25.4 mm: between them 238.1 + 2.5, over them 269.9 + 2.5 (1 %).
        await StartAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).TapAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = "caliper" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Still 4201 h" }).TapAsync();
        await page.TapDigitsAsync("1216");
        await page.GetByRole(AriaRole.Button, new() { Name = "Next field" }).TapAsync();
        await page.TapDigitsAsync("1249");
        await SaveAsync("Save");
        await EndAsync("caliper", most: 14);

        await StartAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Lubricated" }).TapAsync();
        await SaveAsync("Record: lubricated");
        await EndAsync("lubricated", most: 2);

        await page.ShowAsync("#/");
        await page.EvaluateAsync("() => { window.taps = 0; }");
        await page.GetByRole(AriaRole.Link, new() { Name = "Oil", Exact = true }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Lubricated: TAPS-2" }).TapAsync();
        await Assertions.Expect(page.Locator(".oil", new() { HasText = "TAPS-2" })).ToContainTextAsync("kept here");
        await EndAsync("lubricated from the oil list", most: 2);

        async Task StartAsync()
        {
            await page.ShowAsync($"#/chain/{id}");
            await page.EvaluateAsync("() => { window.taps = 0; }");
        }

        async Task SaveAsync(string name)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).TapAsync();
            await Assertions.Expect(page.Locator(".saved")).ToBeVisibleAsync();
        }

        async Task EndAsync(string job, int most)
        {
            var taps = await page.EvaluateAsync<int>("() => window.taps");
            TestContext.Current.TestOutputHelper!.WriteLine($"{job}: {taps} taps");
            Assert.InRange(taps, 1, most);
        }
    }
}
