using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A planner's week, from what is due to what was done: look, plan, adjust, save, order, receive, stop, record, and see stock and
/// forecast move.
/// </summary>
public sealed class PlannerWeekTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_week_runs_through_from_what_is_due_to_the_stock_that_has_fallen()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;

        // Monday: four chains come due, and none is planned.
        await desk.GoAsync("/start/planner");
        await Assertions.Expect(page.Locator(".start-tile").Filter(new() { HasText = "not planned" })).ToContainTextAsync("4");
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await PlanTests.ProposeAsync(page);

        // Adjusted by hand, and saved.
        await page.Locator("[data-chain=D-1]").ClickAsync();
        await page.GetByLabel("Note on this decision").FillAsync("with the gearbox");
        await page.GetByLabel("Note on this decision").PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();

        // Tuesday: the chain is ordered; Thursday: it comes.
        await desk.GoAsync("/plan/orders");
        await page.GetByLabel("Order this part").SelectOptionAsync("16B-1 chain");
        await Assertions.Expect(page.GetByLabel("Quantity to order")).Not.ToHaveValueAsync(""); // what the plan proposes
        await page.GetByLabel("Quantity to order").FillAsync("320");
        await page.GetByRole(AriaRole.Button, new() { Name = "Place order" }).ClickAsync();
        await Assertions.Expect(page.GetByText("chain 16B-1: ordered, expected on ")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Receive chain 16B-1" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put into stock" }).ClickAsync();
        await Assertions.Expect(page.GetByText("chain 16B-1: received.")).ToBeVisibleAsync();
        var stock = await StockAsync(host);
        Assert.Equal(320, stock);

        // Saturday: the stop begins, D-1 is swapped and reported.
        await BeginStopAsync(host);
        await desk.GoAsync("/plan/done");
        await page.GetByLabel("Pitches of the new chain").FillAsync("82");
        await page.GetByLabel("Hours it took").FillAsync("3");
        await page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" }).ClickAsync();
        await Assertions.Expect(page.GetByText("From stock: 81 pitches of chain 16B-1.")).ToBeVisibleAsync();
        Assert.Equal(stock - 81, await StockAsync(host));

        // The week is over: the chain has a new life, and nobody asks for it any more.
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.GetByText("new chain fitted, 82 pitches when new")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/versions");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Debarking") }).First)
            .ToContainTextAsync("3");
        Assert.Empty(desk.Complaints);
    }

    /// <summary>The days go by until the stop of D-1 has begun: its start is moved here, as the clock cannot be.</summary>
    private static async Task BeginStopAsync(DashboardHost host)
    {
        var now = host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var chain = await db.Chains.SingleAsync(c => c.Name == "D-1", Ct);
        await db.Swaps.Where(s => s.ChainId == chain.Id && s.Outcome == SwapEnd.Planned).ExecuteUpdateAsync(
            s => s.SetProperty(x => x.Start, now.AddHours(-2)).SetProperty(x => x.End, now.AddHours(6)), Ct);
    }

    private static async Task<int> StockAsync(DashboardHost host)
    {
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        return (await db.Spares.SingleAsync(s => s.Kind == "Chain" && s.Designation == "16B-1", Ct)).InStock;
    }
}
