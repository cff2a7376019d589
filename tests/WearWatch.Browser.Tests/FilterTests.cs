using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Overview.ChainList;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A person narrows, searches and sorts the list of chains by its controls; its own query says what should stand there.
/// </summary>
public sealed class FilterTests(Screen screen, BigMill mill)
{
    private static readonly ChainFilter Seeded = new() { Search = "SEED" };

    /// <summary>Control, choice, what is asked then, and what each row tells.</summary>
    public static TheoryData<string, string, string, string> Choices => new()
    {
        { "Condition", "swap now", "condition=swap-now", "swap now" },
        { "Line", "Drying", "line=Drying", "Drying" },
        { "Family", ChainFamily.Named("conveyor").Words.ToString(), "family=conveyor", "SEED-" },
        { "Early date", "within 4 weeks", "due=", "SEED-" },
        { "Tension due", "within 12 weeks", "tension=", "SEED-" },
        { "Planned swap", "has none", "planned=no", "SEED-" },
    };

    public static TheoryData<string, ChainSort> Heads => new()
    {
        { "Chain", ChainSort.Name },
        { "Line, position", ChainSort.Line },
        { "Type", ChainSort.Type },
        { "Elongation", ChainSort.Elongation },
        { "Rate, 1,000 h", ChainSort.Rate },
        { "Limit", ChainSort.Limit },
        { "Early date", ChainSort.Early },
        { "Tension by", ChainSort.Tension },
        { "Swap planned", ChainSort.Planned },
        { "Lubrication due", ChainSort.Lubrication },
        { "Last reading", ChainSort.LastReading },
    };

    [Theory]
    [MemberData(nameof(Choices))]
    public async Task A_choice_leaves_the_chains_that_fit_it_beside_the_search_and_back_takes_it_back(
        string control, string choice, string query, string told)
    {
        await using var desk = await ListAsync();
        await desk.Page.GetByLabel(control).SelectOptionAsync(new SelectOptionValue { Label = choice });
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("search=SEED&.*" + Regex.Escape(query)));
        var asked = ChainFilter.FromQuery(new Uri(desk.Page.Url).Query);
        Assert.NotEqual(Seeded, asked);
        await ShowsAsync(desk, asked);
        foreach (var row in await desk.Page.Locator(".chain-grid tbody tr").AllInnerTextsAsync())
            Assert.Contains(told, row, StringComparison.Ordinal);

        await desk.Page.GoBackAsync();
        await ShowsAsync(desk, Seeded);
        await desk.Page.GoForwardAsync();
        await ShowsAsync(desk, asked);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_second_choice_keeps_the_first_and_a_colleague_sees_the_same_by_the_address()
    {
        await using var desk = await ListAsync();
        await desk.Page.GetByLabel("Condition").SelectOptionAsync("swap-now");
        await ShowsAsync(desk, Seeded with { Condition = Condition.SwapNow });
        await desk.Page.GetByLabel("Line").SelectOptionAsync("Press");
        var both = Seeded with { Condition = Condition.SwapNow, Line = "Press" };
        await ShowsAsync(desk, both);
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Elongation" }).ClickAsync();
        await ShowsAsync(desk, both with { Sort = ChainSort.Elongation });

        await using var colleague = await screen.AtDeskAsync(address: await mill.OpenAsync());
        await colleague.GoAsync(new Uri(desk.Page.Url).PathAndQuery);
        await ShowsAsync(colleague, both with { Sort = ChainSort.Elongation });
        await Assertions.Expect(colleague.Page.GetByLabel("Condition")).ToHaveValueAsync("swap-now");
        await Assertions.Expect(colleague.Page.GetByLabel("Line")).ToHaveValueAsync("Press");
        await Assertions.Expect(colleague.Page.GetByLabel("Search")).ToHaveValueAsync("SEED");

        await colleague.Page.GetByRole(AriaRole.Button, new() { Name = "Show all" }).ClickAsync();
        await ShowsAsync(colleague, new ChainFilter { Sort = ChainSort.Elongation });
        await Assertions.Expect(colleague.Page.GetByLabel("Search")).ToHaveValueAsync("");
    }

    [Fact]
    public async Task Typing_searches_as_it_rests_and_loses_neither_letters_nor_the_field()
    {
        await using var desk = await ListAsync();
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Chains", Exact = true }).First.ClickAsync();
        await ShowsAsync(desk, new ChainFilter());
        var search = desk.Page.GetByLabel("Search");
        await search.PressSequentiallyAsync("SEED-01", new() { Delay = 200 });
        await ShowsAsync(desk, new ChainFilter { Search = "SEED-01" });
        await search.PressSequentiallyAsync("23", new() { Delay = 400 });
        await ShowsAsync(desk, new ChainFilter { Search = "SEED-0123" });
        await Assertions.Expect(search).ToHaveValueAsync("SEED-0123");
        await Assertions.Expect(search).ToBeFocusedAsync();

        // All of the typing was one step.
        await desk.Page.GoBackAsync();
        await ShowsAsync(desk, new ChainFilter());
        await Assertions.Expect(search).ToHaveValueAsync("");
    }

    [Theory]
    [MemberData(nameof(Heads))]
    public async Task A_head_sorts_its_column_up_and_then_down(string head, ChainSort sort)
    {
        await using var desk = await ListAsync();
        var down = sort == new ChainFilter().Sort; // the list opens sorted by it
        for (var click = 0; click < 2; click++, down = !down)
        {
            await desk.Page.Locator(".sort-head", new() { HasText = head }).First.ClickAsync();
            await ShowsAsync(desk, Seeded with { Sort = sort, Descending = down });
        }

        await desk.Page.GoBackAsync();
        await ShowsAsync(desk, Seeded with { Sort = sort, Descending = down });
    }

    // The seed gives each eleventh chain a day to shorten it and each thirteenth one to tension it; the earlier counts.
    [Fact]
    public async Task The_list_leaves_as_a_file_as_it_is_narrowed_and_sorted()
    {
        await using var desk = await ListAsync();
        await desk.Page.GetByLabel("Tension due").SelectOptionAsync(new SelectOptionValue { Label = "within 4 weeks" });
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("tension="));
        await ShowsAsync(desk, ChainFilter.FromQuery(new Uri(desk.Page.Url).Query));
        await desk.Page.Locator(".sort-head", new() { HasText = "Tension by" }).ClickAsync();
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex("tension=.*sort=tension"));
        var asked = ChainFilter.FromQuery(new Uri(desk.Page.Url).Query);
        await ShowsAsync(desk, asked);
        var cell = desk.Page.Locator(".chain-grid tbody tr").First.Locator(".shorten");
        await Assertions.Expect(cell).ToHaveTextAsync(new Regex("shorten|tension anew"));
        await desk.PictureAsync("chain-list-tension");
        Assert.Empty(await desk.BarriersAsync());

        var file = await desk.Page.RunAndWaitForDownloadAsync(
            () => desk.Page.GetByRole(AriaRole.Link, new() { Name = "CSV", Exact = true }).ClickAsync());
        Assert.Equal("chains.csv", file.SuggestedFilename);
        var lines = await File.ReadAllLinesAsync(await file.PathAsync(), TestContext.Current.CancellationToken);
        var head = lines[0].Split(',');
        var rows = lines[1..].Select(line => line.Split(',')).ToList();
        Assert.Contains("replace_by", head);
        var days = rows.ConvertAll(r => DateTimeOffset.Parse(r[Array.IndexOf(head, "tension_by")], CultureInfo.InvariantCulture));
        Assert.Equal(days.Order(), days);
        Assert.All(days, day => Assert.True(day < mill.Host.Services.GetRequiredService<TimeProvider>().GetUtcNow().AddDays(29)));
        var tasks = rows.Select(r => r[Array.IndexOf(head, "tension_task")]).ToHashSet();
        Assert.True(tasks.SetEquals(["shorten", "tension"]), string.Join(", ", tasks));
        await Assertions.Expect(desk.Page.Locator(".page-head [role=status]")).ToHaveTextAsync(Words(rows.Count, asked));
        Assert.Empty(desk.Complaints);
    }

    private async Task<Visit> ListAsync()
    {
        var desk = await screen.AtDeskAsync(address: await mill.OpenAsync());
        await desk.GoAsync("/chains" + Seeded.ToQuery());
        await ShowsAsync(desk, Seeded);
        return desk;
    }

    private static string Words(int chains, ChainFilter filter) =>
        chains.ToString("#,0", CultureInfo.InvariantCulture)
        + (chains == 1 ? " chain" : " chains") + (!filter.IsNarrowed ? "" : chains == 1 ? " fits" : " fit");

    /// <summary>Waits until the page counts what the filter leaves and shows its first rows in their order.</summary>
    private async Task ShowsAsync(Visit desk, ChainFilter filter)
    {
        var chains = mill.Host.Services.GetRequiredService<ChainListQuery>();
        var page = await chains.AskAsync(filter, 0, 5, TestContext.Current.CancellationToken);
        Assert.NotEmpty(page.Rows);
        await Assertions.Expect(desk.Page.Locator(".page-head [role=status]")).ToHaveTextAsync(Words(page.Total, filter));
        for (var i = 0; i < page.Rows.Count; i++)
        {
            await Assertions.Expect(desk.Page.Locator(".chain-grid .chain-link").Nth(i)).ToContainTextAsync(page.Rows[i].Name);
        }
    }
}
