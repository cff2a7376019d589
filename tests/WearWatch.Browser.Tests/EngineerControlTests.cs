using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>Controls of the engineer's pages, each used and its effect seen.</summary>
public sealed class EngineerControlTests(Screen screen)
{
    [Fact]
    public async Task The_reliability_at_hours_of_ones_own_stands_beside_the_b_lives_with_its_band_and_the_fit_is_judged()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/engineering/lives?by=line");
        var lives = page.Locator("div[aria-label='B-lives and reliability']");
        await Assertions.Expect(lives).ToContainTextAsync("B10");
        await Assertions.Expect(lives).ToContainTextAsync(new Regex("It fits|It does not fit|Too few failures"));
        await page.GetByLabel("Reliability at, h").FillAsync("12000");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show it" }).ClickAsync();
        await Assertions.Expect(lives.GetByRole(AriaRole.Columnheader, new() { Name = "R(12,000 h)" })).ToBeVisibleAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("hours=12000"));
        await desk.PictureAsync("engineering-reliability");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_lot_is_compared_with_all_others_and_a_period_with_another()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/engineering/compare?by=line");
        var group = page.Locator("label.field:has(> span:text-is('Group')) select");
        await group.First.SelectOptionAsync("Press");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("a=Press"));
        await group.Nth(1).SelectOptionAsync("*others");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("a=Press.*b=%2Aothers"));
        await Assertions.Expect(group.Nth(1)).ToHaveValueAsync("*others");
        await page.GetByLabel("Fitted from").First.FillAsync("2020-01-01");
        await page.GetByLabel("Fitted from").First.PressAsync("Tab");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("a_from=2020-01-01"));
        await page.GetByLabel("and before").First.FillAsync("2040-01-01");
        await page.GetByLabel("and before").First.PressAsync("Tab");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("a_to=2040-01-01"));
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task The_record_shows_forecasts_made_again_and_tells_them_apart_by_line()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/engineering/record");
        await page.GetByRole(AriaRole.Combobox, new() { Name = "Forecasts", Exact = true }).SelectOptionAsync("remade");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("source=remade"));
        await page.GetByLabel("Groups by").SelectOptionAsync("Line");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("by=line"));
        var groups = page.GetByRole(AriaRole.Region, new() { Name = "Group", Exact = true });
        await Assertions.Expect(groups.GetByRole(AriaRole.Rowheader, new() { Name = "Press" })).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task What_could_be_done_to_one_chain_is_worked_out_and_an_unknown_name_is_said()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/engineering/drivers");
        var panel = page.Locator("section.panel").Filter(
            new() { Has = page.GetByRole(AriaRole.Heading, new() { Name = "What if", Exact = true }) });
        await panel.GetByLabel("Chain").FillAsync("DESK-05");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(panel.GetByRole(AriaRole.Rowheader, new() { Name = "a fifth less load" })).ToBeVisibleAsync();
        await panel.GetByLabel("Chain").FillAsync("NOBODY-1");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(panel).ToContainTextAsync("No chain is called NOBODY-1.");
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task Criteria_of_lifting_chains_are_narrowed_by_each_of_their_filters()
    {
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/lifting/criteria");
        var told = page.GetByRole(AriaRole.Status).First;
        var all = await told.TextContentAsync();
        foreach (var name in new[] { "Asks for", "Region", "How sure" })
        {
            await page.GetByLabel(name).SelectOptionAsync(new SelectOptionValue { Index = 1 });
            await Assertions.Expect(told).Not.ToHaveTextAsync(all!);
            await page.GetByRole(AriaRole.Link, new() { Name = "Show all", Exact = true }).ClickAsync();
            await Assertions.Expect(told).ToHaveTextAsync(all!);
        }

        Assert.Empty(desk.Complaints);
    }
}
