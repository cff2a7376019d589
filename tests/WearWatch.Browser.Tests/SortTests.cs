using System.Text.RegularExpressions;
using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;

namespace WearWatch.Browser.Tests;

/// <summary>Every list turns round by its heads and narrows by words; a colleague sees the same by the address.</summary>
public sealed class SortTests(Screen screen, SortedMill mill)
{
    /// <summary>The texts of the rows; what spans columns counts in each.</summary>
    private const string Cells = """
        table => [...table.tBodies[0].rows].map(row => [...row.cells].flatMap(cell =>
          Array(cell.colSpan).fill(cell.innerText.trim().split('\n')[0].trim())))
        """;

    /// <summary>The component that draws the list, its name in the address, its page, and what is clicked there before.</summary>
    public static TheoryData<string, string, string, string> Lists => new()
    {
        { "LineTable", "lines", "/", "" },
        { "OilPanel", "oil", "/", "" },
        { "ReadingPanel", "readings", "/chains/{chain}", "button:text('Show all')" },
        { "HistoryPanel", "forecasts", "/chains/{chain}", "" },
        { "LiftingDuePage", "table", "/lifting", "" },
        { "CriteriaPage", "table", "/lifting/criteria", "" },
        { "SecurityLogPage", "table", "/people/log", "" },
        { "WebhooksPage", "table", "/people/webhooks", "" },
        { "WebhookLogPage", "table", "/people/webhooks/log", "" },
        { "SourcePanel", "table", "/data-sources", "" },
        { "NodePanel", "nodes", "/data-sources", "" },
        { "MappingsPage", "table", "/data-sources/mappings", "" },
        { "MappingVersionsPanel", "mapping-versions", "/data-sources/mapping?name=nodes", "" },
        { "MetricPanel", "metrics", "/data-sources/mapping?name=nodes", "" },
        { "PastImports", "imports", "/import", "" },
        { "OrdersPage", "months", "/plan/orders", "" },
        { "OrderBookPanel", "book", "/plan/orders", "" },
        { "WorkOrdersPage", "table", "/plan/work-orders", "" },
        { "VersionsPage", "versions", "/plan/versions", "" },
        { "VersionComparison", "differences", "/plan/versions?compare=1", "" },
        { "StopResultsPanel", "stops", "/plan/versions", "" },
        { "DecisionsPanel", "decisions", "/plan/versions", "" },
        { "ShutdownsPanel", "shutdowns", "/plan/inputs", "" },
        { "SparesPanel", "spares", "/plan/inputs?part=spares", "" },
        { "SwapTermsPanel", "terms", "/plan/inputs?part=work", "" },
        { "SwapPanel", "moves", "/plan", ".swap-name" },
        { "UsedPage", "table", "/lubrication/used", "" },
        { "MeasureFirstPanel", "first", "/rounds", "" },
        { "TypesPage", "own", "/types", "" },
        { "TypeList", "types", "/types?all=yes&family=leaf", "" },
        { "UnverifiedPage", "table", "/types/unverified?search=16B", "" },
        { "DriveResult", "rated", "/drive?type=16B-1&teeth=19&driven_teeth=57&rpm=100&power=2%20kW&pitches=120", "" },
        { "GroupTable", "table", "/engineering/lives?by=line", "" },
        { "ReliabilityPanel", "reliability", "/engineering/lives?by=line&hours=8000", "" },
        { "RecordTable", "share", "/engineering/record?source=remade", "" },
        { "RecordTable", "group", "/engineering/record?source=remade&by=line", "" },
        { "CostTable", "table", "/engineering/costs?by=line", "" },
        { "ChangeTable", "table", "/engineering/changes", "" },
        { "AgainstTable", "fast", "/engineering/drivers", "" },
        { "PossibleChangesPanel", "changes", "/engineering/drivers?chain={chain}", "" },
        { "PassPanel", "passes", "/chains/{chain}/signals", "" },
        { "RunningPanel", "running", "/chains/{chain}/signals", "" },
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task A_click_on_a_head_sorts_the_rows_another_turns_them_round_and_a_shared_link_shows_the_same(
        string list, string name, string page, string first)
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        var table = await OpenAsync(desk, page.Replace("{chain}", Uri.EscapeDataString(mill.Chain)), name, first);
        await TurnAsync(desk.Page, table, list, name);
        await using var colleague = await screen.AtDeskAsync(address: await mill.OpenAsync());
        var same = await OpenAsync(colleague, new Uri(desk.Page.Url).PathAndQuery, name, first);
        await Assertions.Expect(same.Locator("th[aria-sort=descending]")).ToHaveCountAsync(1);
        if (!(await RowsAsync(table)).SelectMany(r => r).SequenceEqual((await RowsAsync(same)).SelectMany(r => r)))
            await desk.Page.ReloadAsync(); // the hours of a year go on from one look to the next
        Assert.Equal(await RowsAsync(table), await RowsAsync(same));
        await desk.Page.GoBackAsync();
        await Assertions.Expect(Table(desk.Page, name).Locator("th[aria-sort=ascending]")).ToHaveCountAsync(1);
        Assert.Empty(await colleague.BarriersAsync());
        await FindTests.TryAsync(colleague.Page, name);
        Assert.Empty(desk.Complaints);
        Assert.Empty(colleague.Complaints);
    }

    [Fact]
    public async Task The_devices_of_a_person_sort_on_a_page_without_a_circuit()
    {
        const string password = "forty links of chain";
        await using var server = new ServerProcess();
        await server.StartAsync();
        await using var desk = await screen.AtDeskAsync(address: server.Address);
        await desk.Page.GotoAsync(server.Address + "/people/first");
        await desk.Page.GetByLabel("Code of the console").FillAsync(await server.Code);
        await desk.Page.GetByLabel("Your name").FillAsync("Uma");
        await desk.Page.GetByLabel("Password").FillAsync(password);
        await desk.Page.GetByLabel("The same again").FillAsync(password);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await using var phone = await screen.OnPhoneAsync(address: server.Address);
        await phone.Page.GotoAsync(server.Address + "/people/sign-in");
        await phone.Page.GetByLabel("Your name").FillAsync("Uma");
        await phone.Page.GetByLabel("Password").FillAsync(password);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).TapAsync();
        await phone.Page.WaitForURLAsync(url => !url.Contains("/people/sign-in", StringComparison.Ordinal));
        await desk.Page.GotoAsync(server.Address + "/people/me");
        var table = Table(desk.Page, "sessions");
        Assert.Equal(2, (await RowsAsync(table)).Count);
        await TurnAsync(desk.Page, table, "SessionPanel", "sessions");
        Assert.Empty(await desk.BarriersAsync());
    }

    [Fact]
    public async Task The_report_of_an_import_sorts_while_it_is_there()
    {
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/import");
        await desk.Page.Locator("input[type=file]").First.SetInputFilesAsync(
        [
            File("sort-chains.csv", "name,line,chain_type\nSORT-1,Sorting hall,16B-1\nSORT-2,Sorting hall,20B-1\n"),
            File("sort-readings.csv", "chain,taken_at,counter_h,pitches,length_mm\nSORT-1,2026-01-05T08:00:00Z,100,40,1017\n"
                + "NONE-1,2026-01-05T08:00:00Z,100,40,1017\nNONE-2,no day,100,40,1017\n"),
        ]);
        foreach (var name in new[] { "files", "remarks" })
        {
            await Assertions.Expect(Table(desk.Page, name).Locator("tbody tr").Nth(1)).ToBeVisibleAsync();
            await TurnAsync(desk.Page, Table(desk.Page, name), "ReportPanel", name);
        }

        Assert.Empty(desk.Complaints);
    }

    private static FilePayload File(string name, string text) =>
        new() { Name = name, MimeType = "text/csv", Buffer = System.Text.Encoding.UTF8.GetBytes(text) };

    private static ILocator Table(IPage page, string name) => page.Locator($"table[data-list={name}]");

    /// <summary>Opens a page and waits for its list; a page about people needs no circuit.</summary>
    private static async Task<ILocator> OpenAsync(Visit visit, string page, string name, string first)
    {
        if (page.StartsWith("/people/", StringComparison.Ordinal))
            await visit.Page.GotoAsync(new Uri(new Uri(visit.Address), page).ToString());
        else
            await visit.GoAsync(page);
        if (first.Length > 0) await visit.Page.Locator(first).First.ClickAsync();
        var table = Table(visit.Page, name);
        await Assertions.Expect(table.Locator("tbody tr").Nth(1)).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("progress[aria-label='Forecasts made again']")).ToHaveCountAsync(0);
        return table;
    }

    /// <summary>Clicks every head of a list twice.</summary>
    internal static async Task TurnAsync(IPage page, ILocator table, string list, string name)
    {
        var turned = 0;
        var heads = table.Locator("thead th:has(a.sort-head)");
        var all = await table.Locator("thead th").EvaluateAllAsync<bool[]>(
            "ths => ths.map(th => !!th.querySelector('a.sort-head'))");
        for (var head = 0; head < await heads.CountAsync(); head++)
        {
            var column = all.Index().Where(h => h.Item).ElementAt(head).Index;
            var up = await ClickAsync(page, heads.Nth(head), table, name, "ascending");
            var down = await ClickAsync(page, heads.Nth(head), table, name, "descending");
            var (ups, downs) = (up.Select(r => r[column]).ToList(), down.Select(r => r[column]).ToList());
            Assert.True(Turns(ups, downs), $"{list}, {await heads.Nth(head).InnerTextAsync()}:\n{string.Join(" | ", ups)}\n"
                + string.Join(" | ", downs));
            if (!up.Select(r => string.Concat(r)).SequenceEqual(down.Select(r => string.Concat(r)))) turned++;
        }

        Assert.True(turned > 0, $"{list}, {name}: the rows never turn:\n{await table.InnerTextAsync()}");
    }

    private static async Task<IReadOnlyList<string[]>> ClickAsync(
        IPage page, ILocator head, ILocator table, string name, string way)
    {
        await head.Locator("a.sort-head").ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex($"sort-{name}={(way == "ascending" ? "" : "-")}[a-z0-9_]"));
        await Assertions.Expect(head).ToHaveAttributeAsync("aria-sort", way);
        return await RowsAsync(table);
    }

    private static async Task<IReadOnlyList<string[]>> RowsAsync(ILocator table) => await table.EvaluateAsync<string[][]>(Cells);

    /// <summary>Whether what has a figure is turned round, and what has none, or is a sum, stands below it as before.</summary>
    private static bool Turns(List<string> up, List<string> down) => Enumerable.Range(0, up.Count + 1).Any(known =>
        up.Take(known).SequenceEqual(down.Take(known).Reverse()) && up.Skip(known).SequenceEqual(down.Skip(known)));
}
