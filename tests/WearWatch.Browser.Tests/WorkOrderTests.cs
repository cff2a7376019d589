using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A saved plan goes out, another system answers by file and over HTTP: it shows on board, chain and notice, the swap is done by
/// it, and what contradicts is settled by a person.
/// </summary>
public sealed class WorkOrderTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_package_goes_out_its_answers_come_back_and_a_contradiction_is_settled()
    {
        await using var host = await PlanTests.MillAsync();
        await AfterStopTests.BeginAsync(host);
        await AddNoticeAsync(host);
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/work-orders");
        await Assertions.Expect(page.GetByText("Nothing was reported")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs");
        await page.GetByLabel("Repeats").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await page.GetByRole(AriaRole.Button, new() { Name = "Propose a plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Proposed.")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved: ")).ToBeVisibleAsync();

        await desk.GoAsync("/plan/stop");
        await page.Locator("ul.notices a").First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^Work package: ") }))
            .ToBeVisibleAsync();
        var json = await DownloadAsync(page, "JSON");
        var csv = await DownloadAsync(page, "CSV");
        var swap = JsonDocument.Parse(json).RootElement.GetProperty("swaps")[0];
        var (id, chain) = (swap.GetProperty("id").GetString()!, swap.GetProperty("chain").GetString()!);
        Assert.Contains($"{id},{chain},", csv, StringComparison.Ordinal);

        await desk.GoAsync("/import");
        await page.Locator("input[type=file]").First.SetInputFilesAsync(
            File("orders.csv", $"Ref;Auftrag;Status\n{id};4711;released\n"));
        await page.GetByLabel("Holds").SelectOptionAsync("WorkOrders");
        foreach (var (theirs, ours) in new[] { ("Ref", "swap"), ("Auftrag", "order_number"), ("Status", "order_state") })
        {
            await page.GetByLabel($"Column {theirs} is read as").SelectOptionAsync(ours);
            await Assertions.Expect(page.GetByLabel($"Column {theirs} is read as")).ToHaveValueAsync(ours);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 1 row" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "To the plant" })).ToBeVisibleAsync();
        await desk.GoAsync($"/chains/{chain}");
        await Assertions.Expect(page.Locator(".headline-swap .order-mark")).ToHaveTextAsync(" order 4711: released");
        await desk.GoAsync("/plan");
        await Assertions.Expect(page.Locator($".swap-card:has([data-chain={chain}]) .order-mark"))
            .ToHaveTextAsync("order 4711: released");
        await page.Locator($"[data-chain={chain}]").ClickAsync();
        await Assertions.Expect(page.Locator(".swap-panel .order-mark")).ToContainTextAsync("order 4711: released");
        await desk.PictureAsync("work-order-on-board");
        Assert.Empty(await desk.BarriersAsync());

        var begun = await BegunIdAsync(host);
        await ReportAsync(desk, $$"""{"swap":"{{begun}}","order_number":"4712","order_state":"in_work"}""");
        await desk.GoAsync("/notices");
        await Assertions.Expect(page.Locator("li.notice:has-text('D-1') .order-mark")).ToContainTextAsync("order 4712: in work");
        Assert.Empty(await desk.BarriersAsync());
        var done = host.Services.GetRequiredService<TimeProvider>().GetUtcNow().AddHours(-1);
        await ReportAsync(desk, $$"""
            {"swap":"{{begun}}","order_state":"done","done_at":"{{Text(done)}}","hours_worked":3.5,
             "material":[{"part":"16B-1 chain","quantity":90}]}
            """);
        await desk.GoAsync("/plan/inputs?part=spares");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "chain 16B-1" })).ToContainTextAsync("70");
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.GetByText("new chain fitted").First).ToBeVisibleAsync();
        await desk.GoAsync("/plan/done");
        await Assertions.Expect(page.GetByText("From stock: 90 pitches of chain 16B-1.")).ToBeVisibleAsync();

        await ReportAsync(desk, $$"""{"swap":"{{begun}}","order_state":"done","done_at":"{{Text(done.AddDays(-9))}}"}""");
        await ReportAsync(desk, """{"swap":"swap-777","order_state":"open"}""");
        await desk.GoAsync("/notices");
        await Assertions.Expect(page.GetByText("2 reports on work orders contradict what is known here.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan");
        await page.GetByRole(AriaRole.Link, new() { Name = "Work packages" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Work orders" }).ClickAsync();
        var open = page.GetByRole(AriaRole.List, new() { Name = "To be settled" });
        await Assertions.Expect(open.GetByText("It was reported here as done on")).ToBeVisibleAsync();
        await desk.PictureAsync("work-order-conflicts");
        Assert.Empty(await desk.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep ours: swap-777" }).ClickAsync();
        await Assertions.Expect(page.GetByText("swap-777: what stands here is kept.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = $"Take theirs: D-1, {begun}" }).ClickAsync();
        await Assertions.Expect(page.GetByText($"{begun}: the report is taken.")).ToBeVisibleAsync();
        await Assertions.Expect(open).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("table[data-list=table] tbody tr").Filter(new() { HasText = "theirs taken" }))
            .ToHaveCountAsync(1);
        await desk.GoAsync("/notices");
        await Assertions.Expect(page.GetByText("contradict what is known here.")).ToHaveCountAsync(0);
        await desk.GoAsync("/chains/D-1");
        await Assertions.Expect(page.GetByText("new chain fitted").First).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    private static async Task<string> DownloadAsync(IPage page, string name)
    {
        var download = await page.RunAndWaitForDownloadAsync(
            () => page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).ClickAsync());
        return await System.IO.File.ReadAllTextAsync(await download.PathAsync(), Ct);
    }

    private static FilePayload File(string name, string text) =>
        new() { Name = name, MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(text) };

    private static string Text(DateTimeOffset at) =>
        at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    /// <summary>What the other system sends.</summary>
    private static async Task ReportAsync(Visit desk, string body)
    {
        var answer = await desk.Page.APIRequest.PostAsync(new Uri(new Uri(desk.Page.Url), "/api/v1/work-orders").ToString(), new()
        {
            Headers = new Dictionary<string, string>
            {
                ["Idempotency-Key"] = Guid.NewGuid().ToString(),
                ["Content-Type"] = "application/json",
            },
            Data = body,
        });
        Assert.True(answer.Status == 201, $"{answer.Status}: {await answer.TextAsync()}");
    }

    private static async Task<string> BegunIdAsync(DashboardHost host)
    {
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        return $"swap-{await db.Swaps.Where(s => s.WindowId == "stop").Select(s => s.Id).SingleAsync(Ct)}";
    }

    private static async Task AddNoticeAsync(DashboardHost host)
    {
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        db.Notices.Add(new NoticeRow
        {
            ChainId = await db.Chains.Where(c => c.Name == "D-1").Select(c => c.Id).SingleAsync(Ct),
            Kind = NoticeKind.LimitNear,
            Why = $"The limit is near.",
            WhatToDo = $"Swap it.",
            RaisedAt = host.Services.GetRequiredService<TimeProvider>().GetUtcNow().AddDays(-1),
        });
        await db.SaveChangesAsync(Ct);
    }
}
