using System.Globalization;
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
        await desk.GoAsync("/plan");
        var begun = page.GetByRole(AriaRole.Region, new() { Name = "Stops that have begun" });
        await Assertions.Expect(begun).ToContainTextAsync("D-1");
        await desk.PictureAsync("plan-begun-stop");
        await begun.GetByRole(AriaRole.Link, new() { Name = "Report what was done: Debarking" }).ClickAsync();
        await page.GetByLabel("Pitches of the new chain").FillAsync("100");
        await page.GetByLabel("Pitches of the new chain").PressAsync("Tab");
        await Assertions.Expect(page.GetByText("99 pitches of chain 16B-1, 1 connecting link 16B-1")).ToBeVisibleAsync();
        await page.GetByLabel("Length of the old chain").FillAsync("1042");
        await page.GetByLabel("over how many pitches (old)").FillAsync("40");
        await page.GetByLabel("Length of the new chain").FillAsync("1016.6");
        await page.GetByLabel("over how many pitches (new)").FillAsync("40");
        await page.GetByLabel("Hours it took").FillAsync("3.5");
        await page.GetByLabel("Who did it").FillAsync("Fitter A");
        await page.GetByLabel("sprockets replaced with it").CheckAsync();
        await Assertions.Expect(page.GetByText("1 sprocket 16B-1 z17, 1 sprocket 16B-1 z57")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" }).ClickAsync();
        await Assertions.Expect(page.GetByText("From stock: 99 pitches of chain 16B-1.")).ToBeVisibleAsync();
        await desk.PictureAsync("after-stop-reported");
        await desk.GoAsync("/plan/versions");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Debarking") }).First)
            .ToContainTextAsync("3.5");
        await desk.GoAsync("/plan/done");
        Assert.Empty(await desk.BarriersAsync());
        await desk.GoAsync("/plan/inputs?part=spares");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "chain 16B-1" })).ToContainTextAsync("61");
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.GetByText("new chain fitted, 100 pitches when new")).ToBeVisibleAsync();

        await desk.GoAsync("/plan/done");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo the report of D-1" }).ClickAsync();
        await Assertions.Expect(page.GetByText("the report is taken back")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" })).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs?part=spares");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "chain 16B-1" })).ToContainTextAsync("160");
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_date_before_the_stop_is_asked_about_and_a_yes_saves_it()
    {
        await using var host = await PlanTests.MillAsync();
        await BeginAsync(host);
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/done");
        var early = host.Services.GetRequiredService<TimeProvider>().GetUtcNow().AddDays(-40);
        await page.GetByLabel("Done on").FillAsync(early.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture));
        await page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" }).ClickAsync();
        await Assertions.Expect(page.GetByText("The stop began on")).ToBeVisibleAsync();
        await desk.PictureAsync("after-stop-question");
        Assert.Empty(await desk.BarriersAsync());
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "D-1 was swapped" })).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "It is right: save it" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo the report of D-1" })).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "It is right: save it" })).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    /// <summary>The stop of D-1 has begun, and its chain lies in the store.</summary>
    internal static async Task BeginAsync(DashboardHost host)
    {
        var now = host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var chain = await db.Chains.SingleAsync(c => c.Name == "D-1", Ct);
        db.Swaps.Add(new SwapRow
        {
            ChainId = chain.Id,
            WindowId = "stop",
            Start = now.AddHours(-2),
            End = now.AddHours(6),
            PlannedHours = 3,
        });
        db.Spares.Add(
            new SpareRow { Kind = "Chain", Designation = "16B-1", InStock = 160, LeadDays = 28, PackSize = 160, Price = 3 });
        await db.SaveChangesAsync(Ct);
    }
}
