using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>An engineer reads a chain's chart: dates on its axis, a part of it, the figure at an hour by the keyboard.</summary>
public sealed class WearChartTests(Screen screen)
{
    [Fact]
    public async Task The_chart_shows_dates_a_part_and_the_figure_at_an_hour_and_its_address_shows_the_same_again()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/chains/DESK-04");
        var chart = page.Locator("svg.wear-chart.for-desk");
        await page.GetByLabel("dates on the axis").CheckAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("axis=dates"));
        await Assertions.Expect(chart).ToContainTextAsync(new Regex("date; ahead by the average week"));
        await Assertions.Expect(chart).ToContainTextAsync(new Regex("20[0-9][0-9]|[A-Z][a-z]{2} [0-9]{2}"));

        await page.GetByLabel("Read off").FocusAsync();
        await page.Keyboard.PressAsync("Home");
        for (var i = 0; i < 100; i++) await page.Keyboard.PressAsync("ArrowRight");
        var figure = page.GetByText(new Regex("^At [0-9,]+ h.*%"));
        await Assertions.Expect(figure).ToBeVisibleAsync();
        await Assertions.Expect(chart.Locator("line.cross")).ToHaveCountAsync(2);
        var before = await figure.TextContentAsync();
        for (var i = 0; i < 40; i++) await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(figure).Not.ToHaveTextAsync(before!);
        await desk.PictureAsync("chain-chart-dates");

        await page.GetByLabel("From, h").FillAsync("500");
        await page.GetByLabel("To, h").FillAsync("3000");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the part" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("from=500.*to=3000.*axis=dates"));
        await page.GetByLabel("dates on the axis").UncheckAsync();
        await Assertions.Expect(page).Not.ToHaveURLAsync(new Regex("axis"));
        await Assertions.Expect(chart.GetByText("1,000", new() { Exact = true })).ToBeVisibleAsync();
        await desk.PictureAsync("chain-chart-part");
        await using var colleague = await screen.AtDeskAsync();
        await colleague.GoAsync(new Uri(page.Url).PathAndQuery);
        await Assertions.Expect(colleague.Page.GetByLabel("From, h")).ToHaveValueAsync("500");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the whole" }).ClickAsync();
        await Assertions.Expect(page).Not.ToHaveURLAsync(new Regex("from="));
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }
}
