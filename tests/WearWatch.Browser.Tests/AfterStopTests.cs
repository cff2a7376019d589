using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>
/// After the stop a fitter's card is entered: the new chain's life begins, the stock falls, and a slip is undone.
/// </summary>
public sealed class AfterStopTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_swap_is_reported_with_its_parts_the_stock_falls_and_undo_puts_them_back()
    {
        await using var host = await PlanTests.MillAsync();
        await BeginAsync(host);
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/done");
        await page.GetByLabel("Pitches of the new chain").FillAsync("100");
        await page.GetByLabel("Pitches of the new chain").PressAsync("Tab");
        await Assertions.Expect(page.GetByText("99 pitches of 16B-1 chain, 1 16B-1 connecting link")).ToBeVisibleAsync();
        await page.GetByLabel("sprockets replaced with it").CheckAsync();
        await Assertions.Expect(page.GetByText("1 16B-1 z17 sprocket, 1 16B-1 z57 sprocket")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" }).ClickAsync();
        await Assertions.Expect(page.GetByText("From stock: 99 pitches of 16B-1 chain.")).ToBeVisibleAsync();
        await desk.PictureAsync("after-stop-reported");
        Assert.Empty(await desk.BarriersAsync());
        await desk.GoAsync("/plan/inputs");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "16B-1 chain" })).ToContainTextAsync("61");
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.GetByText("new chain fitted, 100 pitches when new")).ToBeVisibleAsync();

        await desk.GoAsync("/plan/done");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo the report of D-1" }).ClickAsync();
        await Assertions.Expect(page.GetByText("the report is taken back")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" })).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "16B-1 chain" })).ToContainTextAsync("160");
        Assert.Empty(desk.Complaints);
    }

    private static async Task BeginAsync(DashboardHost host)
    {
        var now = host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var chain = await db.Chains.SingleAsync(c => c.Name == "D-1", Ct);
        db.Swaps.Add(new SwapRow { ChainId = chain.Id, WindowId = "stop", Start = now.AddHours(-2), End = now.AddHours(6) });
        db.Spares.Add(
            new SpareRow { Kind = "Chain", Designation = "16B-1", InStock = 160, LeadDays = 28, PackSize = 160, Price = 3 });
        await db.SaveChangesAsync(Ct);
    }
}
