using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>An engineer sorts the tables of his pages, and asks what would halve the wear of a class.</summary>
public sealed class EngineerTableTests(Screen screen)
{
    [Theory]
    [InlineData("/engineering/drivers", "Chains that wear faster", "Chain", "fast=chain")]
    [InlineData("/engineering/costs?by=line", "Costs by group", "Running hours", "table=hours")]
    [InlineData("/engineering/lives?by=line", "Groups", "Line", "table=group")]
    public async Task A_click_on_a_head_sorts_the_rows_another_turns_them_round_and_a_shared_link_shows_the_same(
        string address, string table, string head, string sorted)
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync(address);
        var region = desk.Page.GetByRole(AriaRole.Region, new() { Name = table, Exact = true })
            .Filter(new() { Has = desk.Page.Locator("table") }).Last;
        var column = region.GetByRole(AriaRole.Columnheader, new() { NameRegex = new Regex("^" + head) }).First;
        await column.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("sort-" + sorted));
        await Assertions.Expect(column).ToHaveAttributeAsync("aria-sort", "ascending");
        var up = await region.Locator("tbody th[scope=row]").AllInnerTextsAsync();
        await column.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(column).ToHaveAttributeAsync("aria-sort", "descending");
        var down = await region.Locator("tbody th[scope=row]").AllInnerTextsAsync();
        var sums = address.Contains("costs", StringComparison.Ordinal) ? 1 : 0; // the sum stays the last row
        Assert.Equal(up.SkipLast(sums), down.SkipLast(sums).Reverse());
        await using var colleague = await screen.AtDeskAsync();
        await colleague.GoAsync(new Uri(desk.Page.Url).PathAndQuery);
        var same = colleague.Page.GetByRole(AriaRole.Region, new() { Name = table, Exact = true })
            .Filter(new() { Has = colleague.Page.Locator("table") }).Last;
        await Assertions.Expect(same.Locator("tbody th[scope=row]").First).ToHaveTextAsync(down[0].Trim());
        await desk.Page.GoBackAsync();
        await Assertions.Expect(column).ToHaveAttributeAsync("aria-sort", "ascending");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task What_would_halve_the_wear_of_a_class_is_worked_out_with_band_cost_and_payback()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/engineering/drivers");
        var panel = page.Locator("section.panel", new() { HasText = "What would halve it" });
        await panel.GetByLabel("Class by").SelectOptionAsync("Line");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("by=line"));
        await panel.GetByRole(AriaRole.Combobox, new() { Name = "Class", Exact = true }).SelectOptionAsync("Press");
        await panel.GetByLabel("What changes").SelectOptionAsync("Load");
        await panel.GetByLabel("To % of today").FillAsync("50");
        await panel.GetByLabel("Costs once").FillAsync("4000");
        await panel.GetByLabel("Costs a year").FillAsync("10");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Work out the change" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("class=Press.*driver=load.*to=50.*once=4000.*yearly=10"));
        await Assertions.Expect(panel).ToContainTextAsync("30 of 30 chains");
        await Assertions.Expect(panel).ToContainTextAsync(new Regex("Life, 90 % interval\\s*× [12]"));
        await Assertions.Expect(panel.GetByRole(AriaRole.Status)).ToContainTextAsync(new Regex("halve"));
        await desk.PictureAsync("engineering-halving");
        await panel.GetByLabel("What changes").SelectOptionAsync("OilInterval");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Work out the change" }).ClickAsync();
        await Assertions.Expect(panel).ToContainTextAsync("The fleet model does not use it");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }
}
