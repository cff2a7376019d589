using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A pin that comes to its limit years before the length puts its chain onto the plan, and is named wherever the date stands.
/// </summary>
public sealed class FirstLimitTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // The length is at 0.36 of 3 % after 3,600 h. Of the way of the pin from 8.28 to 7.90 mm a third is left after as many.
    [Fact]
    public async Task The_third_reading_of_a_pin_puts_its_chain_onto_the_plan_by_that_cause()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await TakeInAsync(host.Services);
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("1 shutdown added.")).ToBeVisibleAsync();
        await desk.GoAsync("/chains");
        var row = page.Locator(".chain-grid tbody tr", new() { HasText = "PINS-1" });
        await Assertions.Expect(row).ToBeVisibleAsync();
        await Assertions.Expect(row.Locator(".limited-by")).ToHaveCountAsync(0);
        await desk.GoAsync("/plan");
        await Assertions.Expect(page.Locator(".page-head h1")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("[data-chain=PINS-1]")).ToHaveCountAsync(0);

        await desk.GoAsync("/chains/PINS-1");
        await page.GetByText("Enter a reading of a part").ClickAsync();
        var entry = page.Locator(".measure-entry");
        await entry.GetByRole(AriaRole.Combobox, new() { Name = "Part", Exact = true }).SelectOptionAsync("PinDiameter");
        await entry.GetByLabel("Measured").FillAsync("8.02");
        await entry.GetByLabel("Hour counter").FillAsync("3610");
        await entry.GetByRole(AriaRole.Button, new() { Name = "Save the reading" }).ClickAsync();
        await Assertions.Expect(page.Locator(".limited-by")).ToHaveTextAsync("First at its limit: pin diameter.");
        await Assertions.Expect(page.Locator(".headline")).ToContainTextAsync("First at its limit: pin diameter.");
        await Assertions.Expect(page.Locator(".alone .measure-track.wide")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".alone .measure-track:not(.wide)")).ToBeHiddenAsync();
        await desk.PictureAsync("chain-first-limit");
        Assert.Empty(await desk.BarriersAsync());

        await desk.GoAsync("/chains");
        await Assertions.Expect(row.Locator(".limited-by")).ToHaveTextAsync("pin diameter");
        await desk.GoAsync("/plan");
        await PlanTests.ProposeAsync(page);
        var card = page.Locator(".swap-card:has([data-chain=PINS-1])");
        await Assertions.Expect(card).ToContainTextAsync(", pin diameter");
        await page.Locator("[data-chain=PINS-1]").ClickAsync();
        await Assertions.Expect(page.Locator(".why-here .limited-by")).ToContainTextAsync("First at its limit: pin diameter.");
        await desk.PictureAsync("plan-first-limit");
        Assert.Empty(await desk.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/card/PINS-1");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Old chain") }))
            .ToContainTextAsync(", pin diameter");
        Assert.Empty(desk.Complaints);

        await using var phone = await screen.OnPhoneAsync(dark: true, address: desk.Address);
        await phone.Page.GotoAsync($"{desk.Address}/floor/#/chain/{await IdAsync(host.Services)}");
        await Assertions.Expect(phone.Page.Locator(".facts")).ToContainTextAsync(new Regex("First at its limit\\s*pin diameter"));
        await phone.PictureAsync("floor-first-limit-dark");
        Assert.Equal("", await phone.OverTheEdgeAsync());
        Assert.Empty(phone.Complaints);
    }

    // The links that join a shortened chain are ordered; a strand that runs beside it is shortened, and joined, with it.
    [Fact]
    public async Task Strands_that_are_grouped_are_shortened_together_and_their_links_are_ordered()
    {
        await using var host = await PlanTests.MillAsync();
        await using (var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct))
        {
            var from = host.Services.GetRequiredService<TimeProvider>().GetUtcNow().AddDays(20);
            var id = await db.Chains.Where(c => c.Name == "D-1").Select(c => c.Id).SingleAsync(Ct);
            await db.Forecasts.Where(f => f.ChainId == id).ExecuteUpdateAsync(
                set => set.SetProperty(f => f.ShortenEarlyDate, from).SetProperty(f => f.ShortenPitches, 2), Ct);
        }

        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        var links = page.Locator(".plan-figures tbody tr", new() { HasText = "connecting link 16B-1" });
        await desk.GoAsync("/plan/orders");
        await Assertions.Expect(links.Locator(".shorten")).ToHaveTextAsync(new Regex("^to shorten D-1, "));
        await Assertions.Expect(links).ToContainTextAsync("1 piece");

        await desk.GoAsync("/plan/inputs?part=work");
        foreach (var chain in new[] { "D-1", "D-2" })
        {
            await page.GetByLabel("Chain", new() { Exact = true }).FillAsync(chain);
            await page.GetByLabel("Group; empty to take it out").FillAsync("strands");
            await page.GetByRole(AriaRole.Button, new() { Name = "Save the chain" }).ClickAsync();
            await Assertions.Expect(page.GetByText($"{chain}: saved.")).ToBeVisibleAsync();
        }

        await desk.GoAsync("/plan/orders");
        await Assertions.Expect(links.Locator(".shorten"))
            .ToHaveTextAsync(new Regex("^to shorten D-1, D-2, "));
        await Assertions.Expect(links).ToContainTextAsync("2 pieces");
        await desk.PictureAsync("order-shortening");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    private static async Task<int> IdAsync(IServiceProvider services)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        return await db.Chains.Where(c => c.Name == "PINS-1").Select(c => c.Id).SingleAsync(Ct);
    }

    private static Task<ImportReport> TakeInAsync(IServiceProvider services)
    {
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        string At(double h) => now.AddHours((h - 3600) / 0.9 - 24)
            .ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        var readings = new StringBuilder("chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n");
        for (var h = 600; h <= 3600; h += 600)
        {
            readings.AppendLine(FormattableString.Invariant(
                $"PINS-1,{At(h)},{h},tape,,48,{1219.2 * (1 + 0.001 * h / 1000):0.0},mm,20"));
        }

        (string Name, string Text)[] files =
        [
            ("chains.csv", "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h\n"
                + $"PINS-1,Pin line,drive,16B-1,25.4,120,{At(0)},0\n"),
            ("readings.csv", readings.ToString()),
            ("part_readings.csv", "chain,taken_at,counter_h,part,place,value,new,limit,limit_source,unit\n"
                + $"PINS-1,{At(1200)},1200,pin_diameter,,8.2,8.28,7.9,manual p. 3,mm\n"
                + $"PINS-1,{At(2400)},2400,pin_diameter,,8.11,,,,mm\n"),
        ];
        return services.GetRequiredService<FileImport>().ImportAsync(
            [.. files.Select(f => new ImportFile(f.Name, () => new MemoryStream(Encoding.UTF8.GetBytes(f.Text))) { By = "Ina" })],
            ct: Ct);
    }
}
