using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>What is typed above a list narrows it, on live pages and without a circuit; a shared link shows the same.</summary>
public sealed class FindTests(Screen screen, SortedMill mill)
{
    [Fact]
    public async Task Words_typed_above_a_list_leave_the_rows_that_hold_them_and_a_colleague_sees_the_same()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        await desk.GoAsync("/engineering/drivers");
        var list = List(desk.Page, "fast");
        var all = await RowsAsync(list);
        Assert.True(all.Count > 7, $"only {all.Count} rows");
        var name = all[^1].Split('\n', '\t')[0].Trim();
        var box = list.GetByRole(AriaRole.Searchbox);
        await box.FillAsync(name.ToLowerInvariant());
        await Assertions.Expect(list.GetByRole(AriaRole.Status)).ToContainTextAsync("1 of");
        Assert.Equal(name, Assert.Single(await RowsAsync(list)).Split('\n', '\t')[0].Trim());
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("find-fast="));
        await list.Locator("a.sort-head").First.ClickAsync();
        await Assertions.Expect(list.Locator("th[aria-sort]")).ToHaveCountAsync(1);
        Assert.Single(await RowsAsync(list));
        await desk.PictureAsync("list-find-desk");
        Assert.Empty(await desk.BarriersAsync());
        await using var colleague = await screen.AtDeskAsync(address: await mill.OpenAsync());
        await colleague.GoAsync(new Uri(desk.Page.Url).PathAndQuery);
        var same = List(colleague.Page, "fast");
        await Assertions.Expect(same.GetByRole(AriaRole.Searchbox)).ToHaveValueAsync(name.ToLowerInvariant());
        Assert.Equal(await RowsAsync(list), await RowsAsync(same));
        await box.FillAsync("");
        await Assertions.Expect(list.Locator("tbody tr")).ToHaveCountAsync(all.Count);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_page_without_a_circuit_narrows_its_list_by_enter_and_keeps_its_filter()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        await desk.Page.GotoAsync(await mill.OpenAsync() + "/people/log");
        var list = List(desk.Page, "table");
        var all = await RowsAsync(list);
        Assert.True(all.Count > 7, $"only {all.Count} rows");
        await desk.Page.GotoAsync(await mill.OpenAsync() + "/people/log?kind=&sort-table=who");
        await list.GetByRole(AriaRole.Searchbox).FillAsync("about 4");
        await list.GetByRole(AriaRole.Searchbox).PressAsync("Enter");
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("kind=&sort-table=who&find-table=about"));
        var found = await RowsAsync(list);
        Assert.InRange(found.Count, 1, all.Count - 1);
        Assert.All(found, row => Assert.Contains("about 4", row));
        await Assertions.Expect(list.Locator("th[aria-sort=ascending]")).ToHaveCountAsync(1);
    }

    /// <summary>Narrows a list to nothing and shows it whole again; a list that a glance takes has nothing to type in.</summary>
    internal static async Task TryAsync(IPage page, string name)
    {
        var list = List(page, name);
        var box = list.GetByRole(AriaRole.Searchbox);
        if (await box.CountAsync() == 0) return;
        var rows = await list.Locator("tbody tr").CountAsync();
        await box.FillAsync("qqxzzq");
        await box.PressAsync("Enter");
        await Assertions.Expect(list.Locator("tbody tr")).ToHaveCountAsync(0);
        await box.FillAsync("");
        await box.PressAsync("Enter");
        await Assertions.Expect(list.Locator("tbody tr")).ToHaveCountAsync(rows);
    }

    private static ILocator List(IPage page, string name) => page.Locator($".list:has(table[data-list={name}])");

    private static async Task<IReadOnlyList<string>> RowsAsync(ILocator list) =>
        await list.Locator("tbody tr").AllInnerTextsAsync();
}
