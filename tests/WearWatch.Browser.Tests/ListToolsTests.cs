using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>Below each list: which columns it shows, in the address, and what it shows as a file.</summary>
public sealed partial class ListToolsTests(Screen screen, SortedMill mill)
{
    private const string Lives = "/engineering/lives?by=line";

    [Fact]
    public async Task A_hidden_column_stays_away_by_a_shared_link_and_while_the_list_is_sorted_and_comes_back()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        var list = await OpenAsync(desk, Lives);
        var heads = await HeadsAsync(list);
        await list.GetByText("Columns").ClickAsync();
        await list.Locator("[data-column]").Last.ClickAsync();
        await Assertions.Expect(desk.Page).ToHaveURLAsync(Hidden());
        await Assertions.Expect(list.Locator("thead th:visible")).ToHaveCountAsync(heads.Count - 1);
        Assert.Equal(heads.SkipLast(1), await HeadsAsync(list));
        var row = list.Locator("tbody tr:not(:has([colspan]))").First;
        Assert.Equal(heads.Count - 1, await row.Locator("th:visible, td:visible").CountAsync());
        await desk.PictureAsync("list-tools-desk");
        Assert.Empty(await desk.BarriersAsync());
        await list.Locator("a.sort-head:visible").First.ClickAsync();
        await Assertions.Expect(list.Locator("th[aria-sort]")).ToHaveCountAsync(1);
        await using var colleague = await screen.AtDeskAsync(address: await mill.OpenAsync());
        var same = await OpenAsync(colleague, new Uri(desk.Page.Url).PathAndQuery);
        Assert.Equal(await HeadsAsync(list), await HeadsAsync(same));
        await list.Locator("[data-column]").Last.ClickAsync();
        await Assertions.Expect(list.Locator("thead th:visible")).ToHaveCountAsync(heads.Count);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task The_file_has_the_columns_and_rows_that_are_shown_in_their_order()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        var list = await OpenAsync(desk, Lives);
        await list.Locator("a.sort-head").First.ClickAsync();
        await Assertions.Expect(list.Locator("th[aria-sort]")).ToHaveCountAsync(1);
        var all = await list.Locator("thead th:visible").CountAsync();
        await list.GetByText("Columns").ClickAsync();
        await list.Locator("[data-column]").Last.ClickAsync();
        await Assertions.Expect(list.Locator("thead th:visible")).ToHaveCountAsync(all - 1);
        var lines = await FileAsync(desk.Page, list);
        Assert.Equal(await HeadsAsync(list), lines[0].Split(','));
        var rows = await list.Locator("tbody tr").EvaluateAllAsync<string[]>(
            "rows => rows.map(row => row.cells[0].innerText.trim())");
        Assert.Equal(rows, lines.Skip(1).Select(line => line.Split(',')[0].Trim('"')));
    }

    [Fact]
    public async Task In_a_language_with_a_decimal_comma_semicolons_part_the_columns()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync(), locale: "de");
        var list = await OpenAsync(desk, Lives);
        var lines = await FileAsync(desk.Page, list);
        Assert.Equal(await HeadsAsync(list), lines[0].Split(';'));
        Assert.All(lines.Skip(1), line => Assert.Equal(lines[0].Count(c => c == ';'), line.Count(c => c == ';')));
    }

    [Fact]
    public async Task The_list_of_chains_hides_columns_and_keeps_that_while_it_is_sorted_and_searched()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        await desk.GoAsync("/chains");
        var heads = desk.Page.Locator(".chain-grid thead th:visible");
        await Assertions.Expect(desk.Page.Locator(".chain-grid .chain-link").First).ToBeVisibleAsync();
        var all = await heads.CountAsync();
        await desk.Page.GetByText("Columns", new() { Exact = true }).ClickAsync();
        foreach (var (column, left) in new[] { ("type", all - 1), ("limit", all - 2) })
        {
            await desk.Page.Locator($"[data-column={column}]").ClickAsync();
            await Assertions.Expect(heads).ToHaveCountAsync(left);
        }

        await desk.Page.Locator(".chain-grid a.sort-head", new() { HasText = "Elongation" }).ClickAsync();
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("sort=elongation.*hide-chains=type.limit"));
        await desk.Page.GetByLabel("Search").FillAsync(mill.Chain);
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("search=.*hide-chains=type.limit"));
        await Assertions.Expect(desk.Page.Locator(".chain-grid .chain-link").First).ToContainTextAsync(mill.Chain);
        await Assertions.Expect(heads).ToHaveCountAsync(all - 2);
        await desk.PictureAsync("list-tools-chains-desk");
        Assert.Empty(desk.Complaints);
    }

    private static async Task<ILocator> OpenAsync(Visit visit, string page)
    {
        await visit.GoAsync(page);
        var list = visit.Page.Locator(".list:has(table[data-list=table])");
        await Assertions.Expect(list.Locator("tbody tr").Nth(1)).ToBeVisibleAsync();
        return list;
    }

    private static async Task<IReadOnlyList<string>> HeadsAsync(ILocator list) =>
        await list.Locator("thead th:visible").EvaluateAllAsync<string[]>("""
            heads => heads.map(head => {
              const copy = head.cloneNode(true);
              copy.querySelectorAll('.unseen, svg').forEach(aside => aside.remove());
              return copy.textContent.replace(/\s+/g, ' ').trim();
            })
            """);

    private static async Task<string[]> FileAsync(IPage page, ILocator list)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => list.Locator("[data-csv]").ClickAsync());
        Assert.EndsWith(".csv", download.SuggestedFilename, StringComparison.Ordinal);
        var text = await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        return text.TrimEnd().Split("\r\n");
    }

    [GeneratedRegex("hide-table=[a-z]")]
    private static partial Regex Hidden();
}
