using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>Beside the board: why a swap stands where it does, the package of its stop, and versions of the plan.</summary>
public sealed class PlanDrawerTests(Screen screen)
{
    [Fact]
    public async Task A_planner_asks_why_saves_versions_compares_them_approves_one_and_takes_the_package_of_a_stop()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await PlanTests.ProposeAsync(page);
        await page.Locator("[data-chain=D-1]").ClickAsync();
        var drawer = page.GetByRole(AriaRole.Complementary, new() { Name = "The chosen swap" });
        await Assertions.Expect(drawer).ToContainTextAsync("Why not earlier");
        await Assertions.Expect(drawer).ToContainTextAsync("Why not later");
        await Assertions.Expect(drawer.GetByText("assumed")).ToBeVisibleAsync();
        Assert.True(await drawer.EvaluateAsync<double>("d => d.getBoundingClientRect().left")
            > await page.Locator(".plan-board").EvaluateAsync<double>("b => b.getBoundingClientRect().right"));
        await desk.PictureAsync("plan-drawer");
        Assert.Empty(await desk.BarriersAsync());
        await page.GetByLabel("Name of the version").FillAsync("as proposed");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save as version" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved as version as proposed.")).ToBeVisibleAsync();
        await drawer.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();
        await Assertions.Expect(drawer).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();

        await page.GetByLabel("Line on the board").SelectOptionAsync("Press");
        await Assertions.Expect(page.Locator("[data-chain=D-1]")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("[data-chain=P-1]")).ToBeVisibleAsync();
        var days = await page.Locator(".plan-crew td").CountAsync();
        await page.GetByLabel("fold days without a swap").CheckAsync();
        await Assertions.Expect(page.Locator(".plan-crew td")).Not.ToHaveCountAsync(days);
        await page.GoBackAsync();
        await Assertions.Expect(page.GetByLabel("fold days without a swap")).Not.ToBeCheckedAsync();
        await page.GetByLabel("Line on the board").SelectOptionAsync("");
        await page.GetByLabel("Condition on the board").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("condition="));
        await page.GetByLabel("Condition on the board").SelectOptionAsync("");
        await page.GetByRole(AriaRole.Link, new() { Name = "Work packages" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Debarking") }).First.ClickAsync();
        foreach (var list in new[] { "Sequence", "Hours by fitter", "Pick list", "Cut list" })
            await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = list })).ToBeVisibleAsync();
        await desk.PictureAsync("work-package");
        Assert.Empty(await desk.BarriersAsync());
        var sheet = await page.RunAndWaitForDownloadAsync(
            () => page.GetByRole(AriaRole.Link, new() { Name = "xlsx" }).ClickAsync());
        Assert.Equal("work-package.xlsx", sheet.SuggestedFilename);
        var pdf = await page.GetByRole(AriaRole.Link, new() { Name = "PDF" }).GetAttributeAsync("href");
        var paper = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), pdf!).ToString());
        Assert.Equal("application/pdf", paper.Headers["content-type"]);

        await desk.GoAsync("/plan/versions");
        await page.GetByRole(AriaRole.Link, new() { Name = "Compare as proposed" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Every swap stands where it stands in the plan.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Approve as proposed" }).ClickAsync();
        await Assertions.Expect(page.GetByText("as proposed: approved.")).ToBeVisibleAsync();
        await desk.PictureAsync("plan-versions");
        Assert.Empty(await desk.BarriersAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "Put as proposed on the board" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-chain=D-1]")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }
    [Fact]
    public async Task A_board_is_looked_at_under_other_circumstances_and_a_swap_is_locked_and_freed()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await page.GetByLabel("Crew hours, %").FillAsync("60");
        await page.GetByLabel("Deliveries late, days").FillAsync("10");
        await page.GetByLabel("Shutdown moved").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await page.GetByLabel("by days").FillAsync("3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look at it", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("this is not the real plan")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Back to the real one" }).ClickAsync();
        await Assertions.Expect(page.GetByText("this is not the real plan")).ToHaveCountAsync(0);
        await page.Locator("[data-chain=P-1]").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Lock", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("P-1: locked.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Unlock" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Unpin" }).ClickAsync();
        await Assertions.Expect(page.GetByText("P-1: free to be moved by proposals.")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }
}
