using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>An engineer asks what would halve the wear of a class.</summary>
public sealed class HalvingTests(Screen screen)
{
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
