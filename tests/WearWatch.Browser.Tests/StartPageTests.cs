using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A start page for each trade: few figures, and each is a link to what it counts.</summary>
public sealed class StartPageTests(Screen screen)
{
    [Theory]
    [InlineData("Planner", "next stop", "due in 12 weeks and not planned", "orders late")]
    [InlineData("Engineer", "wear faster than before", "of running", "that failed")]
    [InlineData("Technician", "tasks left on the round of today", "want oil now", "notices that ask for a person")]
    public async Task Each_figure_leads_to_what_it_counts(string trade, params string[] figures)
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/");
        await page.GetByRole(AriaRole.Link, new() { Name = trade, Exact = true }).ClickAsync();
        var tiles = page.Locator(".start-tile");
        await Assertions.Expect(tiles.First).ToBeVisibleAsync();
        await desk.PictureAsync($"start-{trade.ToLowerInvariant()}");
        Assert.Empty(await desk.BarriersAsync());
        foreach (var figure in figures)
        {
            var tile = tiles.Filter(new() { HasText = figure == "next stop" ? "stop" : figure }).First;
            await Assertions.Expect(tile).ToBeVisibleAsync();
            var address = await tile.GetAttributeAsync("href");
            await tile.ClickAsync();
            await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex(
                System.Text.RegularExpressions.Regex.Escape(address!.Split('?')[0])));
            await Assertions.Expect(page.Locator("h1").First).ToBeVisibleAsync();
            await page.GoBackAsync();
            await Assertions.Expect(tiles.First).ToBeVisibleAsync();
        }

        Assert.Empty(desk.Complaints);
    }
}
