using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>What a plant says of itself: its hours, its law, its lubrication; and the demo mill in an empty plant.</summary>
public sealed class SettingsControlTests(Screen screen)
{
    /// <summary>Each term of lubrication by its name on the page, with a figure of its own.</summary>
    private static readonly (string Name, string Figure)[] terms =
    [
        ("Cost of one lubrication", "12.5"), ("Wearing out one chain costs", "1450"), ("Factor for moderate dust", "0.8"),
        ("Factor for heavy dust", "0.55"), ("Factor above 40 °C", "0.7"), ("Factor for the first interval", "1.6"),
        ("Look at a lubricator after", "7"),
    ];

    [Fact]
    public async Task Shifts_days_without_production_utilisation_and_law_are_kept_and_a_slip_of_a_shift_is_said_beside_it()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        var page = desk.Page;
        await desk.GoAsync("/settings");
        await page.GetByLabel("Utilisation").FillAsync("85");
        await Law(page).SelectOptionAsync("UnitedKingdom");
        await page.GetByLabel("round the clock, every day").UncheckAsync();
        await page.GetByLabel("Monday").FillAsync("six to two");
        await page.GetByLabel("Days without production").FillAsync("2030-12-25");
        await SaveAsync(page);
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Shifts such as 06:00-14:00");
        await page.GetByLabel("Monday").FillAsync("06:00-14:00, 22:00-06:00");
        await SaveAsync(page);
        await Assertions.Expect(page.GetByText("Saved. ")).ToBeVisibleAsync();

        await desk.GoAsync("/settings");
        await Assertions.Expect(page.GetByLabel("Utilisation")).ToHaveValueAsync("85");
        await Assertions.Expect(Law(page)).ToHaveValueAsync("UnitedKingdom");
        await Assertions.Expect(page.GetByLabel("round the clock, every day")).Not.ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("Monday")).ToHaveValueAsync("06:00-14:00, 22:00-06:00");
        await Assertions.Expect(page.GetByLabel("Tuesday")).ToHaveValueAsync("");
        await Assertions.Expect(page.GetByLabel("Days without production")).ToHaveValueAsync("2030-12-25");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task Every_term_of_lubrication_is_kept_as_it_was_typed()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        var page = desk.Page;
        await desk.GoAsync("/lubrication/interval");
        foreach (var (name, figure) in terms) await page.GetByLabel(name).FillAsync(figure);
        await page.GetByLabel("Factor for heavy dust").FillAsync("0.001");
        await SaveAsync(page);
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("A factor between 0.05 and 20");
        await page.GetByLabel("Factor for heavy dust").FillAsync("0.55");
        await SaveAsync(page);
        await Assertions.Expect(page.GetByText("Saved. ")).ToBeVisibleAsync();

        await desk.GoAsync("/lubrication/interval");
        foreach (var (name, figure) in terms) await Assertions.Expect(page.GetByLabel(name)).ToHaveValueAsync(figure);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task The_demo_mill_is_loaded_by_a_button_and_fills_an_empty_plant()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await desk.GoAsync("/settings");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Load the demo mill" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Progressbar, new() { Name = "Loading the demo mill" }))
            .ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByText("80 chains ·")).ToBeVisibleAsync(new() { Timeout = 300_000 });
        Assert.Empty(desk.Complaints);
    }

    private static ILocator Law(IPage page) => page.Locator("label.field:has(> span:has-text('Whose law')) select");

    private static Task SaveAsync(IPage page) =>
        page.Locator("main").GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
}
