using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A planner drags one of two swaps that stand close together, with the mouse where he saw the card and the place: whatever was
/// chosen before, that card moves there, and its neighbour stays.
/// </summary>
public sealed class PlanDragTests(Screen screen)
{
    public static TheoryData<string, string?> Drags
    {
        get
        {
            TheoryData<string, string?> all = new();
            foreach (var card in new[] { "P-1", "P-2" })
                foreach (var chosen in new[] { null, "D-1", "P-1", "P-2" })
                    all.Add(card, chosen);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Drags))]
    public async Task The_card_under_the_mouse_moves_and_its_neighbour_stays(string card, string? chosen)
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        var neighbour = card == "P-1" ? "P-2" : "P-1";
        var places = page.Locator("tr:has([data-chain=P-1]) td.place");
        if (chosen is not null)
        {
            await page.Locator($"[data-chain={chosen}]").ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Complementary, new() { Name = "The chosen swap" }))
                .ToBeVisibleAsync();
        }

        await page.Locator(".plan-board").EvaluateAsync("board => board.scrollIntoView({ block: 'center' })");
        var from = await BoxAsync(page.Locator($".swap-card:has([data-chain={card}])"));
        var to = await BoxAsync(places.Nth(1));
        await page.Mouse.MoveAsync(from.X + 20, from.Y + from.Height - 10);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(from.X + 30, from.Y + from.Height - 8, new() { Steps = 3 });
        await Assertions.Expect(page.Locator($"[data-chain={card}]")).ToHaveAttributeAsync("aria-pressed", "true");
        Assert.Equal(Place(to), Place(await BoxAsync(places.Nth(1)))); // nothing moves under the mouse
        await page.Mouse.MoveAsync(to.X + to.Width / 2, to.Y + to.Height - 8, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        await Assertions.Expect(places.Nth(1).Locator($"[data-chain={card}]")).ToBeVisibleAsync();
        await Assertions.Expect(places.Nth(0).Locator($"[data-chain={neighbour}]")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText($"{card} moved: ")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator($"[data-chain={card}]")).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        Assert.Empty(desk.Complaints);
    }

    private static async Task<LocatorBoundingBoxResult> BoxAsync(ILocator locator) => (await locator.BoundingBoxAsync())!;

    private static (int, int, int, int) Place(LocatorBoundingBoxResult box) => (
        (int)Math.Round(box.X), (int)Math.Round(box.Y), (int)Math.Round(box.Width), (int)Math.Round(box.Height));
}
