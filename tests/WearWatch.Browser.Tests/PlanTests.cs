using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Chains;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>A planner at the board, on a mill of its own: with the mouse, and with the keyboard alone.</summary>
public sealed class PlanTests(Screen screen)
{
    [Fact]
    public async Task A_planner_enters_shutdowns_proposes_moves_locks_keeps_and_prints_a_job_card()
    {
        await using var host = await MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan");
        await Assertions.Expect(page.GetByText("No shutdown is planned")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Enter shutdowns" }).ClickAsync();
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.PictureAsync("plan-inputs");
        Assert.Empty(await desk.BarriersAsync());

        await desk.GoAsync("/plan");
        await ProposeAsync(page);
        await Assertions.Expect(page.Locator("#plan-gap")).ToContainTextAsync("Proven: no plan costs less");
        await page.Locator("[data-chain=D-1]").ClickAsync();
        await desk.PictureAsync("plan-board");
        Assert.Empty(await desk.BarriersAsync());

        var target = page.Locator("tr:has([data-chain=D-1]) td.place").Nth(2);
        await page.Locator(".swap-card:has([data-chain=D-1])").DragToAsync(target);
        await Assertions.Expect(target.Locator("[data-chain=D-1]")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("D-1 moved: ")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Lock", Exact = true }).ClickAsync();
        await ProposeAsync(page);
        await Assertions.Expect(target.Locator("[data-chain=D-1]")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();

        await desk.GoAsync("/chains?planned=yes");
        await Assertions.Expect(page.Locator(".chain-grid tbody tr:has-text('D-1')")).ToBeVisibleAsync();
        await page.GetByLabel("Planned swap").SelectOptionAsync("no");
        await Assertions.Expect(page.Locator(".chain-grid tbody tr:has-text('D-1')")).ToBeHiddenAsync();
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.Locator(".headline-swap")).ToContainTextAsync("Swap planned for ");
        await Assertions.Expect(page.Locator(".wear-chart.for-desk line.swap")).ToHaveCountAsync(1);
        await desk.PictureAsync("plan-on-chain-page");
        Assert.Empty(await desk.BarriersAsync());
        await desk.GoAsync("/");
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new("^[1-4] planned") }).ClickAsync();
        await Assertions.Expect(page.Locator(".chain-grid tbody tr:has-text('D-1')")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/card/D-1");
        await Assertions.Expect(page.Locator(".job-card h1")).ToHaveTextAsync("Job card: swap chain D-1");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await desk.PictureAsync("plan-job-card");
        await desk.GoAsync("/plan/orders");
        await Assertions.Expect(page.GetByRole(AriaRole.Cell, new() { Name = "chain 16B-1" })
            .Or(page.GetByRole(AriaRole.Rowheader, new() { Name = "chain 16B-1" })).First).ToBeVisibleAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await SortTests.TurnAsync(page, page.Locator("table[data-list=orders]"), "OrdersPage", "orders");
        await desk.PictureAsync("plan-orders");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task The_keyboard_alone_proposes_moves_and_undoes()
    {
        await using var host = await MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).PressAsync("Enter");
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        var name = page.Locator("[data-chain=D-2]");
        await name.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(name).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.GetByText("D-2 moved: ")).ToBeVisibleAsync();
        await Assertions.Expect(name).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("l");
        await Assertions.Expect(page.GetByText("D-2: locked.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).PressAsync("Enter");
        await Assertions.Expect(page.Locator("tr:has([data-chain=D-2]) td").First.Locator("[data-chain=D-2]")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    /// <summary>Proposes a plan and waits for it.</summary>
    internal static async Task ProposeAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Propose a plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Nothing is saved until you save it.")).ToBeVisibleAsync();
    }

    /// <summary>A mill with four chains that come due; those named hold a load and are out of use in so many days.</summary>
    internal static async Task<DashboardHost> MillAsync(params (string Chain, double Days)[] loads)
    {
        var host = new DashboardHost { StandsStill = true };
        host.UseKestrel(0);
        host.StartServer();
        var now = host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        ChainRow[] chains =
            [.. new[] { ("D-1", "Debarking"), ("D-2", "Debarking"), ("P-1", "Press"), ("P-2", "Press") }.Select(c => new ChainRow
        {
            Name = c.Item1, Line = c.Item2, Position = "drive", ChainType = "16B-1", PitchMm = 25.4, Pitches = 81,
            SprocketTeeth = [17, 57], Lifts = loads.Any(load => load.Chain == c.Item1),
        })];
        db.Chains.AddRange(chains);
        await db.SaveChangesAsync();
        db.Forecasts.AddRange(chains.Select((c, i) => new ForecastRow
        {
            ChainId = c.Id,
            MadeAt = now,
            IsLatest = true,
            ModelVersion = "broad prior",
            ReadingsUsed = 8,
            HoursAtLastReading = 6000,
            HoursNow = 6000,
            ElongationPct = 2.4,
            RatePctPer1000H = 0.4,
            LogRateSd = 0.2,
            LimitPct = 3,
            LimitReason = LimitReason.General,
            LimitSource = "seed",
            PercentilesH = [.. Enumerable.Range(1, 99).Select(p => (600 + 400 * i) * (0.5 + p / 100.0))],
            EarlyDate = now.AddHours(0.55 * (600 + 400 * i)),
            MiddleDate = now.AddHours(600 + 400 * i),
            LateDate = now.AddHours(1.45 * (600 + 400 * i)),
            Condition = Condition.PlanASwap,
            OutOfUseBy = loads.Where(load => load.Chain == c.Name).Select(load => (DateTimeOffset?)now.AddDays(load.Days))
                .SingleOrDefault(),
        }));
        await db.SaveChangesAsync();
        return host;
    }
}
