using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>
/// The spare kit of a chain, from its master data to the swap: attachments, store number and sprocket number stand on the chain's
/// page, on the orders, the cut list and the job card, and stay when the chain was swapped.
/// </summary>
public sealed class SpareKitTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_kit_is_entered_once_and_stands_wherever_the_swap_is_prepared()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await TakeInAsync(host.Services);
        var page = desk.Page;

        // Into the master data, and seen on the chain's page.
        await desk.GoAsync("/chains/KIT-1/master-data");
        await page.GetByLabel("Attachments").FillAsync("K1 every 4th pitch");
        await page.GetByLabel("Store number").FillAsync("4711");
        await page.GetByLabel("Sprocket number").FillAsync("W-17");
        var save = page.Locator(".save-bar").GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true });
        await page.GetByLabel("Why is it changed?").FillAsync("counted in the store");
        await page.GetByLabel("Your name").FillAsync("Vera");
        await save.ClickAsync();
        await Assertions.Expect(page.Locator(".save-bar")).ToContainTextAsync("Saved. Changes: 3.");
        await Assertions.Expect(save).ToBeDisabledAsync();
        await SeeOnTheChainAsync(desk);

        // The plan: its sprockets go with it, and the swap stands in a stop.
        await desk.GoAsync("/plan/inputs?part=work");
        await page.GetByLabel("Chain", new() { Exact = true }).FillAsync("KIT-1");
        await page.GetByLabel("replace its sprockets with it").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the chain" }).ClickAsync();
        await Assertions.Expect(page.GetByText("KIT-1: saved.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("1 shutdown added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await PlanTests.ProposeAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();

        // Who orders reads the number of each part beside it.
        await desk.GoAsync("/plan/orders");
        var kits = page.Locator(".kit");
        await Assertions.Expect(kits.Filter(new() { HasText = "KIT-1: K1 every 4th pitch, no. 4711" }).First).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Row).Filter(new() { HasText = "sprocket 16B-1 z17" }).Locator(".kit"))
            .ToHaveTextAsync("KIT-1: no. W-17");
        await desk.PictureAsync("order-kits");
        Assert.Empty(await desk.BarriersAsync());

        // Who prepares the stop finds them on the cut list, who swaps on the job card.
        await desk.GoAsync("/plan/stop");
        await page.Locator(".notices a").First.ClickAsync();
        var cut = page.GetByRole(AriaRole.Row).Filter(new() { HasText = "connecting links" });
        await Assertions.Expect(cut).ToContainTextAsync("K1 every 4th pitch");
        await Assertions.Expect(cut).ToContainTextAsync("4711");
        await Assertions.Expect(page.GetByRole(AriaRole.Row).Filter(new() { HasText = "16B-1 z17 sprocket" }))
            .ToContainTextAsync("W-17");
        await desk.PictureAsync("pick-list-numbers");
        await desk.GoAsync("/plan/card/KIT-1");
        foreach (var (name, value) in new[] { ("Attachments", "K1"), ("Store number", "4711"), ("Sprocket number", "W-17") })
            await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^" + name) }))
                .ToContainTextAsync(value);

        // After the swap the numbers are those of the next one.
        await BeginAsync(host.Services);
        await desk.GoAsync("/plan/done");
        await page.GetByLabel("sprockets replaced with it").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "KIT-1 was swapped" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo the report of KIT-1" })).ToBeVisibleAsync();
        await SeeOnTheChainAsync(desk);
        await Assertions.Expect(page.GetByText("new chain fitted").First).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    private static async Task SeeOnTheChainAsync(Visit desk)
    {
        await desk.GoAsync("/chains/KIT-1");
        var facts = desk.Page.GetByRole(AriaRole.Region, new() { Name = "What it is" });
        foreach (var (name, value) in new[]
        {
            ("Attachments", "K1 every 4th pitch"), ("Store number", "4711"), ("Sprocket number", "W-17"),
        })
            await Assertions.Expect(facts.Locator($"div:has(> dt:text-is('{name}')) dd")).ToHaveTextAsync(value);
    }

    private static async Task BeginAsync(IServiceProvider services)
    {
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        await db.Swaps.Where(s => s.Outcome == SwapEnd.Planned).ExecuteUpdateAsync(
            s => s.SetProperty(x => x.Start, now.AddHours(-2)).SetProperty(x => x.End, now.AddHours(6)), Ct);
    }

    /// <summary>A chain that wears at 0.6 % in 1,000 h and stands at 2.2 of 3 %: its swap is due within the plan.</summary>
    private static Task<ImportReport> TakeInAsync(IServiceProvider services)
    {
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var readings = new StringBuilder("chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n");
        for (var h = 600; h <= 3600; h += 600)
        {
            var at = now.AddHours((h - 3600) / 0.9 - 24);
            readings.AppendLine(FormattableString.Invariant(
                $"KIT-1,{at:yyyy-MM-dd'T'HH:mm:ss'Z'},{h},tape,,48,{1219.2 * (1.001 + 0.006 * h / 1000):0.0},mm,20"));
        }

        var fitted = now.AddHours(-3600 / 0.9 - 24).ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        (string Name, string Text)[] files =
        [
            ("chains.csv", "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,sprocket_teeth\n"
                + $"KIT-1,Debarking,drive,16B-1,25.4,120,{fitted},0,17\n"),
            ("readings.csv", readings.ToString()),
        ];
        return services.GetRequiredService<FileImport>().ImportAsync(
            [.. files.Select(f => new ImportFile(f.Name, () => new MemoryStream(Encoding.UTF8.GetBytes(f.Text))) { By = "Ina" })],
            ct: Ct);
    }
}
