using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>What a plan is made from: in tabs, the stock by paste, shutdowns changed in place in a calendar.</summary>
public sealed class PlanInputTests(Screen screen)
{
    [Fact]
    public async Task Stock_is_pasted_and_a_shutdown_is_changed_in_its_calendar()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs");
        await page.GetByRole(AriaRole.Link, new() { Name = "Spares" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("part=spares"));
        var list = page.GetByLabel("Paste a table, or choose a CSV file below");
        await list.FillAsync("chain_type;in_stock;price\n16B-1;many;2,85");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save this list" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Line 2: in_stock");
        await page.GetByLabel("Stock as CSV").SetInputFilesAsync(new FilePayload
        {
            Name = "stock.csv",
            MimeType = "text/csv",
            Buffer = "chain_type;in_stock;price\n16B-1;120;2,85"u8.ToArray(),
        });
        await Assertions.Expect(list).ToHaveValueAsync("chain_type;in_stock;price\n16B-1;120;2,85");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save this list" }).ClickAsync();
        await Assertions.Expect(page.GetByText("1 part saved.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "chain 16B-1" })).ToContainTextAsync("120");
        await desk.PictureAsync("plan-inputs-spares");
        Assert.Empty(await desk.BarriersAsync());

        await page.GetByRole(AriaRole.Link, new() { Name = "Shutdowns", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 shutdowns added.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Month after" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Debarking .*: change") }).First.ClickAsync();
        await page.GetByLabel("Lasts, h").FillAsync("12");
        await page.GetByLabel("People in it").FillAsync("3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save shutdown" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Debarking: shutdown changed.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Debarking") }).First)
            .ToContainTextAsync("36");
        await page.GetByRole(AriaRole.Button, new() { Name = "Month before" }).ClickAsync();
        await desk.PictureAsync("plan-inputs-calendar");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    /// <summary>Each cost by its name on the page, with a figure of its own.</summary>
    private static readonly (string Name, string Figure)[] costs =
    [
        ("Currency", "CHF"), ("Stopped line, per hour", "1510"), ("Hours that a stop for swaps adds", "0.6"),
        ("Hours that a breakdown stops the line", "7.5"), ("A breakdown costs beside that", "3100"),
        ("Mean hours from limit to failure", "1700"), ("Overtime, per hour more", "21"), ("Express, share of the price", "0.35"),
        ("A pitch of chain not in the store", "4.5"), ("Sprockets of a drive", "260"), ("Plan ahead, weeks", "20"),
        ("Leave stops alone, hours before", "72"),
    ];

    [Fact]
    public async Task Every_cost_is_kept_as_it_was_typed()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs?part=costs");
        foreach (var (name, figure) in costs) await page.GetByLabel(name).FillAsync(figure);
        await page.GetByLabel("Lines whose stopped hour costs something else").FillAsync("Press = 2400");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the costs" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs?part=costs");
        foreach (var (name, figure) in costs) await Assertions.Expect(page.GetByLabel(name)).ToHaveValueAsync(figure);
        await Assertions.Expect(page.GetByLabel("Lines whose stopped hour costs something else"))
            .ToHaveValueAsync("Press = 2400");
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_part_and_a_shutdown_are_entered_field_by_field()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/inputs?part=spares");
        await Choice(page, "Part").SelectOptionAsync("Sprocket");
        foreach (var (name, figure) in new[]
        {
            ("Chain type", "16B-1 z17"), ("In stock", "2"), ("Lead time, days", "35"), ("By express, days", "6"),
            ("Pack size", "1"), ("Price each", "88.5"), ("On order: date and quantity, one a line", "2030-01-15 4"),
        })
            await page.GetByLabel(name, new() { Exact = name == "In stock" }).FillAsync(figure);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save this part" }).ClickAsync();
        var part = page.GetByRole(AriaRole.Row, new() { Name = "sprocket 16B-1 z17" });
        foreach (var figure in new[] { "35", "6", "88.5", "4 on 15 Jan 2030" })
            await Assertions.Expect(part).ToContainTextAsync(figure);
        await page.GetByRole(AriaRole.Button, new() { Name = "Change sprocket 16B-1 z17" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Lead time, days")).ToHaveValueAsync("35");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove sprocket 16B-1 z17" }).ClickAsync();
        await Assertions.Expect(part).ToHaveCountAsync(0);

        await desk.GoAsync("/plan/inputs?part=shutdowns");
        await Choice(page, "Line").SelectOptionAsync("Press");
        await page.GetByLabel("First day").FillAsync("2030-02-02");
        await page.GetByLabel("Start", new() { Exact = true }).FillAsync("07:30");
        await page.GetByLabel("Length, h").FillAsync("10");
        await page.GetByLabel("Repeats").SelectOptionAsync("own");
        await page.GetByLabel("Rule", new() { Exact = true }).FillAsync("FREQ=MONTHLY;BYDAY=1SA");
        await page.GetByLabel("Crew", new() { Exact = true }).FillAsync("night");
        await page.GetByLabel("People", new() { Exact = true }).FillAsync("4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        var stop = page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Press") }).First;
        foreach (var figure in new[] { "10", "FREQ=MONTHLY;BYDAY=1SA", "night", "40" })
            await Assertions.Expect(stop).ToContainTextAsync(figure);
        await page.GetByLabel("Press: except on").FillAsync("2030-03-02");
        await page.GetByLabel("Press: except on").PressAsync("Tab");
        await Assertions.Expect(stop).ToContainTextAsync("2 Mar 2030");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the shutdown of Press" }).ClickAsync();
        await Assertions.Expect(stop).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    /// <summary>A list to choose from; its label holds the words of the list too.</summary>
    private static ILocator Choice(IPage page, string name) => page.Locator($"label.field:has(> span:text-is('{name}')) select");
}
