using System.Diagnostics;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A handover: two planners work at once on one board. No change is lost, and a conflict is told.</summary>
public sealed class TwoPlannersTests(Screen screen)
{
    [Fact]
    public async Task What_one_saves_appears_at_the_other_within_two_seconds_and_a_conflict_is_told()
    {
        await using var host = await PlanTests.MillAsync();
        var address = host.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        await using var early = await screen.AtDeskAsync(address: address);
        await using var late = await screen.AtDeskAsync(address: address);
        await early.GoAsync("/plan/inputs");
        await early.Page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await early.Page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(early.Page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await early.GoAsync("/plan");
        await late.GoAsync("/plan");
        await MoveAsync(late.Page, "D-1", 2);
        await MoveAsync(late.Page, "P-1", 1);
        await MoveAsync(early.Page, "D-1", 1);
        var began = Stopwatch.GetTimestamp();
        await early.Page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(early.Page.GetByText("Saved: ")).ToBeVisibleAsync();
        var saving = Stopwatch.GetElapsedTime(began).TotalSeconds;
        var since = Stopwatch.GetTimestamp();
        await Assertions.Expect(late.Page.GetByText("Somebody else saved decisions on D-1.")).ToBeVisibleAsync();
        await Assertions.Expect(late.Page.GetByText("Your moves of D-1 gave way")).ToBeVisibleAsync();
        // A machine that takes seconds to save may take them to show it as well.
        Assert.InRange(Stopwatch.GetElapsedTime(since).TotalSeconds, 0, Math.Max(2, 2 * saving));
        await Assertions.Expect(PlaceOf(late.Page, "D-1", 1)).ToBeVisibleAsync();
        await Assertions.Expect(PlaceOf(late.Page, "P-1", 1)).ToBeVisibleAsync();
        await late.PictureAsync("two-planners");

        await late.Page.GetByRole(AriaRole.Link, new() { Name = "Orders", Exact = true }).ClickAsync();
        await Assertions.Expect(late.Page.GetByRole(AriaRole.Alertdialog)).ToContainTextAsync("not saved");
        Assert.Empty(await late.BarriersAsync());
        await late.Page.GetByRole(AriaRole.Button, new() { Name = "Stay on the board" }).ClickAsync();
        await late.Page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(late.Page.GetByText("Saved: 1 decision changed.")).ToBeVisibleAsync();
        await Assertions.Expect(PlaceOf(early.Page, "P-1", 1)).ToBeVisibleAsync();

        await MoveAsync(late.Page, "P-2", 2);
        await late.Page.GetByRole(AriaRole.Link, new() { Name = "Orders", Exact = true }).ClickAsync();
        await late.Page.GetByRole(AriaRole.Button, new() { Name = "Leave without saving" }).ClickAsync();
        await Assertions.Expect(late.Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/plan/orders$"));
        Assert.Empty(early.Complaints);
        Assert.Empty(late.Complaints);
    }

    private static ILocator PlaceOf(IPage page, string chain, int place) =>
        page.Locator($"tr:has([data-chain={chain}]) td.place").Nth(place).Locator($"[data-chain={chain}]");

    private static async Task MoveAsync(IPage page, string chain, int places)
    {
        var card = page.Locator($"[data-chain={chain}]");
        await card.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(card).ToHaveAttributeAsync("aria-pressed", "true");
        for (var i = 1; i <= places; i++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
            await Assertions.Expect(PlaceOf(page, chain, i)).ToBeVisibleAsync();
            await Assertions.Expect(card).ToBeFocusedAsync();
        }
    }
}
