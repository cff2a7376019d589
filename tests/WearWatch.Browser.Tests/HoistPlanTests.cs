using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A planner at the board of a mill with chains that hold a load.</summary>
public sealed class HoistPlanTests(Screen screen)
{
    [Fact]
    public async Task A_chain_that_holds_a_load_cannot_be_moved_past_its_date_and_the_page_says_first_what_is_out_of_use()
    {
        await using var host = await PlanTests.MillAsync(("D-1", 20), ("P-1", 0.01));
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();

        await desk.GoAsync("/plan");
        await PlanTests.ProposeAsync(page);
        var loads = page.GetByRole(AriaRole.Region, new() { Name = "Chains that hold a load" });
        await Assertions.Expect(loads.Locator("li").First).ToContainTextAsync("Out of use");
        await Assertions.Expect(loads).ToContainTextAsync("P-1");
        await page.Locator("[data-chain=D-1]").ClickAsync();
        var before = await PlaceAsync(page);
        await desk.PictureAsync("plan-hoist-board");
        Assert.Empty(await desk.BarriersAsync());

        await page.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync(); // the drawer takes room from the board
        await Assertions.Expect(page.GetByRole(AriaRole.Complementary, new() { Name = "The chosen swap" })).ToHaveCountAsync(0);
        var target = page.Locator("tr:has([data-chain=D-1]) td.place").Nth(3);
        await page.Locator(".swap-card:has([data-chain=D-1])").DragToAsync(target);
        await Assertions.Expect(page.Locator("#plan-refusal")).ToContainTextAsync("D-1 holds a load: out of use from");
        await Assertions.Expect(page.Locator("#plan-refusal"))
            .ToContainTextAsync("Choose an earlier one, or take the chain out of use by that day.");
        Assert.Equal(before, await PlaceAsync(page));
        await desk.PictureAsync("plan-hoist-refused");
        Assert.Empty(await desk.BarriersAsync());

        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#plan-refusal")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Too late: D-1 to " }).First.ClickAsync();
        await Assertions.Expect(page.Locator("#plan-refusal")).ToContainTextAsync("D-1 holds a load: out of use from");
        Assert.Equal(before, await PlaceAsync(page));
        await desk.GoAsync("/plan/card/D-1");
        await Assertions.Expect(page.Locator(".job-card")).ToContainTextAsync("Holds a load");
        await Assertions.Expect(page.Locator(".job-card")).ToContainTextAsync("A competent person examines");
        await desk.PictureAsync("plan-hoist-card");
        Assert.Empty(desk.Complaints);
    }

    /// <summary>In which column of its line the chain stands.</summary>
    private static Task<int> PlaceAsync(IPage page) =>
        page.Locator("td:has([data-chain=D-1])").EvaluateAsync<int>("cell => cell.cellIndex");
}
