using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using WearWatch.Dashboard.Tests.People;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A reliability engineer's month: alarms of faster wear, a lot that is found to be bad, the decision about it on record, what
/// came of it in the report and among the lives, and what it did to wear and costs when a year has gone by.
/// </summary>
public sealed class EngineerMonthTests(Screen screen)
{
    [Fact]
    public async Task A_bad_lot_is_found_decided_about_carried_out_and_seen_to_have_helped_a_year_later()
    {
        var clock = new MovedClock();
        await using var host = new DashboardHost { StandsStill = true, Clock = clock };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await SeededLots.FillAsync(host.Services);
        var page = desk.Page;

        // The month's report asks whether two alarms are real.
        await desk.GoAsync("/engineering/report");
        var report = page.Locator(".month-report");
        await Assertions.Expect(report).ToContainTextAsync("Whether 2 alarms of faster wear are real");
        await Assertions.Expect(report).ToContainTextAsync("Began to wear faster: LOT-00, LOT-01.");

        // What do both have in common? By lot their lives fall into two groups.
        await OpenAsync(page, "Lives", "How long chains last");
        await page.Locator(".filters select").First.SelectOptionAsync("Lot");
        await Assertions.Expect(page.GetByLabel("Draw B-17")).ToBeVisibleAsync();
        var replacedBefore = await FigureAsync(page, 3);
        var running = await FigureAsync(page, 4);

        // Against all others, it wears faster and lasts less long.
        await OpenAsync(page, "Compare", "Compare groups or periods");
        await page.Locator(".filters select").First.SelectOptionAsync("Lot");
        var group = page.Locator("label.field:has(> span:text-is('Group')) select");
        await group.First.SelectOptionAsync("B-17");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("a=B-17"));
        await group.Nth(1).SelectOptionAsync("*others");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("b=%2Aothers"));
        await page.GetByRole(AriaRole.Heading, new() { Name = "B-17 (A) and all others (B)" }).WaitForAsync();
        foreach (var figure in new[] { "^Wear rate", "^Median life \\(Weibull\\)" })
            await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new(figure) }))
                .ToContainTextAsync("they differ");
        await desk.PictureAsync("engineer-month-compare");
        Assert.Empty(await desk.BarriersAsync());

        // So one alarm was real; the other one was a reading after a weekend.
        await desk.GoAsync("/engineering/changes");
        await page.GetByRole(AriaRole.Button, new() { Name = "LOT-00: the alarm was real" }).ClickAsync();
        await Assertions.Expect(page.GetByText("1 was real")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "LOT-01: false alarm" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^LOT-01") }))
            .ToContainTextAsync("false alarm");

        // The decision stands beside the notice, for whoever reads it next.
        await desk.GoAsync("/notices");
        var notice = page.Locator(".notices > .notice", new() { HasText = "LOT-00" }).First;
        await notice.GetByRole(AriaRole.Button, new() { Name = "Assign, snooze, comment: LOT-00" }).ClickAsync();
        await notice.GetByRole(AriaRole.Textbox, new() { Name = "Comment" }).FillAsync("Lot B-17 goes back to the supplier.");
        await notice.GetByRole(AriaRole.Button, new() { Name = "Add comment" }).ClickAsync();
        await Assertions.Expect(notice).ToContainTextAsync("“Lot B-17 goes back to the supplier.”");

        // It is carried out at one of the chains.
        await desk.GoAsync("/chains/LOT-00/done");
        await page.GetByRole(AriaRole.Button, new() { Name = "Chain replaced" }).ClickAsync();
        await page.GetByLabel("Hour counter").FillAsync("14168");
        await page.GetByLabel("Supplier's lot").FillAsync("A-03");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record: chain replaced" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("starts at 0 h");

        // One life of the bad lot has ended before its limit, and the report has nothing to ask about alarms.
        await desk.GoAsync("/engineering/lives?by=lot");
        await Assertions.Expect(Cell(page, 3)).ToHaveTextAsync(Text(replacedBefore + 1));
        await Assertions.Expect(Cell(page, 4)).ToHaveTextAsync(Text(running - 1));
        await desk.GoAsync("/engineering/report");
        await Assertions.Expect(report).ToContainTextAsync("Began to wear faster");
        await Assertions.Expect(report).Not.ToContainTextAsync("of faster wear");
        await desk.PictureAsync("engineer-month-report");
        Assert.Empty(desk.Complaints);

        // The fitters take off what is left of the lot; a year goes by, told by its readings.
        var decided = clock.GetUtcNow();
        await LotYear.GoByAsync(host.Services, clock);
        await using var later = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        await SeeWhatItDidAsync(later, decided);
    }

    private static async Task SeeWhatItDidAsync(Visit desk, DateTimeOffset decided)
    {
        // None of the lot runs any more, and what took its place wears slower.
        var page = desk.Page;
        await desk.GoAsync("/engineering/lives?by=lot");
        await Assertions.Expect(Cell(page, 4)).ToHaveTextAsync("0");
        await OpenAsync(page, "Compare", "Compare groups or periods");
        await page.Locator(".filters select").First.SelectOptionAsync("Lot");
        var group = page.Locator("label.field:has(> span:text-is('Group')) select");
        await group.First.SelectOptionAsync("B-17");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("a=B-17"));
        await group.Nth(1).SelectOptionAsync("A-03");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("b=A-03"));
        await page.GetByLabel("Fitted from").Nth(1).FillAsync(decided.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        await page.GetByLabel("Fitted from").Nth(1).PressAsync("Tab");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("b_from="));
        await page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^B-17 \\(A\\) and A-03, fitted from") }).WaitForAsync();
        var wear = page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Wear rate") });
        await Assertions.Expect(wear).ToContainTextAsync("they differ");
        await Assertions.Expect(wear).ToContainTextAsync("16 lives");
        await desk.PictureAsync("engineer-year-compare");

        // The year cost less than the one before, and the manager sees when its last swap was.
        await OpenAsync(page, "Costs", "What chains cost");
        await Assertions.Expect(page.GetByText(new Regex("% less than in the year before"))).ToBeVisibleAsync();
        await desk.GoAsync("/engineering/report");
        var report = page.Locator(".month-report");
        await Assertions.Expect(report).ToContainTextAsync("No chain was swapped in the month.");
        await Assertions.Expect(report).Not.ToContainTextAsync("of faster wear");
        var costs = report.GetByRole(AriaRole.Img, new() { NameRegex = new("^Cost from month to month") });
        await Assertions.Expect(costs.Locator("rect.bar", new() { HasText = "EUR" }).Last).ToContainTextAsync(
            LotYear.LastSwap(decided).ToString("MMM yy", CultureInfo.InvariantCulture));
        await desk.PictureAsync("engineer-year-report");
        Assert.Empty(desk.Complaints);
    }

    private static async Task OpenAsync(IPage page, string tab, string heading)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = tab, Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = heading }).WaitForAsync();
    }

    /// <summary>A figure of lot B-17 in the table of groups: lives, reached limit, replaced before, still running.</summary>
    private static ILocator Cell(IPage page, int column) =>
        page.Locator("tr:has(input[aria-label='Draw B-17']) td").Nth(column);

    private static async Task<int> FigureAsync(IPage page, int column) =>
        int.Parse(await Cell(page, column).InnerTextAsync(), CultureInfo.InvariantCulture);

    private static string Text(int figure) => figure.ToString(CultureInfo.InvariantCulture);
}
