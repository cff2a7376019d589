using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

public sealed class EngineeringTests(Screen screen, Walk walk) : IClassFixture<Walk>
{
    /// <summary>Address, name of the pictures, and what stands on the page once it is whole.</summary>
    public static TheoryData<string, string, string> Pages => new()
    {
        { "/engineering/lives?by=lubrication", "desk-lives", ".desk-chart .dot" },
        { "/engineering/lives?by=all&paper=lognormal", "desk-lives-all", ".desk-chart .area" },
        { "/engineering/record?source=remade&at=75", "desk-record", ".desk-chart circle.dot" },
        { "/engineering/record", "desk-record-kept", ".panel" },
        { "/engineering/drivers?chain=DESK-02", "desk-drivers", ".desk-chart .trace" },
        { "/engineering/changes", "desk-changes", ".table" },
        { "/engineering/costs?by=line", "desk-costs", ".desk-chart" },
        { "/engineering/compare?by=line&a=Drying&b=Press", "desk-compare", ".table" },
        { "/engineering/report", "desk-report", ".panel" },
        { "/engineering/data", "desk-data", ".exports" },
    };

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_page_of_the_desk_stands_in_light_and_dark_on_desk_and_phone(string path, string name, string whole)
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        foreach (var dark in new[] { false, true })
        {
            await using var desk = await walk.LookAsync(onPhone: false, dark);
            await CheckAsync(desk, path, whole, $"{name}-desk-{(dark ? "dark" : "light")}");
            Assert.InRange(await LargestLabelPxAsync(desk.Page), 0, 12.6);
        }

        await using var phone = await walk.LookAsync(onPhone: true, dark: false);
        await CheckAsync(phone, path, whole, $"{name}-phone-light");
    }

    /// <summary>The labels of all charts of the desk have one size, however wide their place on the page is.</summary>
    private static Task<double> LargestLabelPxAsync(IPage page) => page.EvaluateAsync<double>("""
        () => Math.max(0, ...[...document.querySelectorAll('.desk-chart text')]
          .map(t => parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a))
        """);

    [Fact]
    public async Task A_group_is_drawn_when_its_box_is_ticked_and_the_address_tells_it()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/engineering/lives?by=lubrication&show=automatic");
        await desk.Page.GetByLabel("Draw by hand").CheckAsync();
        await desk.Page.Locator(".remark", new() { HasTextString = "Log-rank test of the 2 groups drawn" }).WaitForAsync();
        Assert.EndsWith("show=automatic&show=by%20hand", desk.Page.Url, StringComparison.Ordinal);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_choice_and_a_link_of_the_desk_are_steps_of_the_browser_that_can_be_taken_back()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/engineering");
        await desk.Page.Locator(".desk-chart").First.WaitForAsync();
        await desk.Page.Locator(".filters select").First.SelectOptionAsync("Line");
        await Assertions.Expect(desk.Page.GetByLabel("Draw Press")).ToBeVisibleAsync();
        await desk.Page.GetByLabel("Distribution").SelectOptionAsync("lognormal");
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "lognormal plot" })).ToBeVisibleAsync();
        Assert.EndsWith("?by=line&paper=lognormal", desk.Page.Url, StringComparison.Ordinal);
        await desk.Page.GoBackAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Weibull plot" })).ToBeVisibleAsync();
        await desk.Page.Locator(".desk-tabs").GetByRole(AriaRole.Link, new() { Name = "Lives", Exact = true }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".filters select").First).ToHaveValueAsync("Type");

        await desk.GoAsync("/engineering/report");
        var heading = desk.Page.GetByRole(AriaRole.Heading, new() { Level = 1 });
        await desk.Page.Locator(".month-report").WaitForAsync();
        var newest = await heading.InnerTextAsync();
        await desk.Page.Locator(".actions a").First.ClickAsync();
        await Assertions.Expect(heading).Not.ToHaveTextAsync(newest);
        Assert.Contains("/engineering/report?month=", desk.Page.Url, StringComparison.Ordinal);
        await desk.Page.GoBackAsync();
        await Assertions.Expect(heading).ToHaveTextAsync(newest);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task Groups_of_which_nothing_can_be_fitted_are_shown_on_wish()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await PlantFiles.TakeInAsync(screen.Host.Services, "UNFIT");
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/engineering/lives?by=line");
        var group = desk.Page.GetByRole(AriaRole.Rowheader, new() { Name = "Pallet line" });
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Show all groups" }).ClickAsync();
        await Assertions.Expect(group).ToBeVisibleAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Show fitted groups" }).ClickAsync();
        await Assertions.Expect(group).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task An_alarm_is_judged_with_one_click_and_stays_judged()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/engineering/changes");
        await desk.Page.GetByLabel("DESK-03: the alarm was real").ClickAsync();
        await desk.Page.GetByText("1 was real").WaitForAsync();
        await desk.Page.ReloadAsync();
        await desk.Page.GetByText("1 was real").WaitForAsync();
    }

    private static async Task CheckAsync(Visit visit, string path, string whole, string picture)
    {
        await visit.GoAsync(path);
        await visit.Page.Locator(whole).First.WaitForAsync();
        await visit.PictureAsync(picture);
        Assert.Empty(visit.Complaints);
        Assert.Empty(await visit.BarriersAsync());
    }
}
