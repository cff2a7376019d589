using System.Globalization;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>Controls of the planner's pages, each used and its effect seen.</summary>
public sealed class PlannerControlTests(Screen screen)
{
    [Fact]
    public async Task A_swap_that_was_not_done_needs_a_reason_and_comes_back_into_the_next_plan()
    {
        await using var host = await PlanTests.MillAsync();
        await AfterStopTests.BeginAsync(host);
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        await desk.GoAsync("/plan/done");
        await Assertions.Expect(page.GetByLabel("Note, or why not")).ToBeVisibleAsync();
        var notDone = page.GetByRole(AriaRole.Button, new() { Name = "D-1 was not swapped" });
        await notDone.ClickAsync();
        await page.GetByLabel("Say why not").FillAsync("The crane was out of order");
        await notDone.ClickAsync();
        await Assertions.Expect(page.GetByText("D-1: not done; it is in the next plan.")).ToBeVisibleAsync();
        await Assertions.Expect(notDone).ToHaveCountAsync(0);
        await desk.GoAsync("/plan/inputs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await Assertions.Expect(page.Locator("[data-chain=D-1]")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_swap_whose_parts_did_not_come_from_the_store_leaves_the_stock_as_it_is()
    {
        await using var host = await PlanTests.MillAsync();
        await AfterStopTests.BeginAsync(host);
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        await desk.GoAsync("/plan/done");
        await page.GetByLabel("parts from stock").UncheckAsync();
        await page.GetByLabel("Note, or why not").FillAsync("the supplier brought the chain along");
        await page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Nothing was taken from stock.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs?part=spares");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "chain 16B-1" })).ToContainTextAsync("160");
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.GetByText("the supplier brought the chain along")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_shutdown_is_given_another_day_and_crew_in_its_calendar()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Month after" }).ClickAsync();
        var change = page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Debarking .*: change") });
        await change.Last.ClickAsync();
        var first = DateOnly.ParseExact(
            await page.GetByLabel("Begins on").InputValueAsync(), "d MMM yyyy", CultureInfo.InvariantCulture);
        var later = first.AddDays(1).ToString("d MMM yyyy", CultureInfo.InvariantCulture);
        await page.GetByLabel("Begins on").FillAsync(later);
        await page.GetByLabel("Its crew").FillAsync("night");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save shutdown" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Debarking: shutdown changed.")).ToBeVisibleAsync();

        await desk.GoAsync("/plan/inputs");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Debarking") }).First)
            .ToContainTextAsync("night");
        await page.GetByRole(AriaRole.Button, new() { Name = "Month after" }).ClickAsync();
        await change.Last.ClickAsync();
        await Assertions.Expect(page.GetByLabel("Begins on")).ToHaveValueAsync(later);
        await Assertions.Expect(page.GetByLabel("Its crew")).ToHaveValueAsync("night");
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task What_the_swap_of_one_chain_takes_is_kept_and_a_group_is_entered_and_left()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs?part=work");
        var panel = page.Locator("section.panel").Filter(
            new() { Has = page.GetByRole(AriaRole.Heading, new() { Name = "Exceptions by chain" }) });
        await panel.GetByLabel("Chain", new() { Exact = true }).FillAsync("D-1");
        await panel.GetByLabel("Hours that the line stands").FillAsync("3.5");
        await panel.GetByLabel("People at once").FillAsync("4");
        await panel.GetByLabel("Group; empty to take it out").FillAsync("pair");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Save the chain" }).ClickAsync();
        var row = panel.GetByRole(AriaRole.Row, new() { NameRegex = new("^D-1") });
        foreach (var figure in new[] { "3.5", "4", "pair" }) await Assertions.Expect(row).ToContainTextAsync(figure);

        await desk.GoAsync("/plan/inputs?part=work");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Change D-1" }).ClickAsync();
        await Assertions.Expect(panel.GetByLabel("Hours that the line stands")).ToHaveValueAsync("3.5");
        await panel.GetByLabel("Group; empty to take it out").FillAsync("");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Save the chain" }).ClickAsync();
        await Assertions.Expect(panel.GetByText("D-1: saved.")).ToBeVisibleAsync();
        await Assertions.Expect(row).Not.ToContainTextAsync("pair");
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_swap_is_moved_by_the_table_of_its_drawer()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await page.Locator("[data-chain=D-2]").ClickAsync();
        var places = page.GetByRole(AriaRole.Region, new() { Name = "Shutdowns to move to" });
        var second = places.GetByRole(AriaRole.Row).Nth(2);
        await second.GetByRole(AriaRole.Button, new() { Name = "Move here: D-2 to " }).ClickAsync();
        await Assertions.Expect(page.GetByText("D-2 moved: ")).ToBeVisibleAsync();
        await Assertions.Expect(second).ToContainTextAsync("here");
        await Assertions.Expect(second.GetByRole(AriaRole.Button)).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    private Task<Visit> AtAsync(DashboardHost host) =>
        screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
}
