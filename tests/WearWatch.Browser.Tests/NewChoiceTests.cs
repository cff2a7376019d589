using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>Until the figures of a new choice are there, those of the earlier one are marked: nobody is misled.</summary>
public sealed class NewChoiceTests(Screen screen)
{
    /// <summary>Writes down each time that the page is marked or not, with the figures that it shows then.</summary>
    private const string Watch = """
        figures => {
          const main = document.querySelector('main');
          window.marks = [];
          new MutationObserver(() => window.marks.push(
            `${main.getAttribute('aria-busy')} ${document.querySelector(figures).innerText}`))
            .observe(main, { attributes: true, attributeFilter: ['aria-busy'] });
        }
        """;

    [Theory]
    [InlineData("/engineering/compare?by=line&a=Drying", "Group", "Press", "section.panel:has(table) h2")]
    [InlineData("/engineering/lives?by=line", "By", "Type", "div[aria-label=Groups] tbody")]
    [InlineData("/engineering/costs?by=line", "By", "Type", "div[aria-label='Costs by group'] tbody")]
    [InlineData("/engineering/record?source=remade&by=line", "Groups by", "Type", "div[aria-label=Group] tbody")]
    public async Task Figures_of_the_earlier_choice_are_marked_until_the_new_ones_are_there(
        string address, string choice, string other, string figures)
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync(address);
        await Assertions.Expect(page.Locator(figures).First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("progress[aria-label='Forecasts made again']")).ToHaveCountAsync(0);
        var before = await page.Locator(figures).First.InnerTextAsync();
        await page.EvaluateAsync(Watch, figures);
        await page.GetByRole(AriaRole.Combobox, new() { Name = choice, Exact = true }).First.SelectOptionAsync(other);
        await page.WaitForFunctionAsync("() => window.marks.length >= 2");
        await Assertions.Expect(page.Locator("main")).Not.ToHaveAttributeAsync("aria-busy", new Regex("."));
        var marks = await page.EvaluateAsync<string[]>("() => window.marks");
        Assert.Equal($"true {before}", marks[0]);
        Assert.StartsWith("null", marks[^1], StringComparison.Ordinal);
        Assert.NotEqual($"null {before}", marks[^1]);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task What_is_marked_is_pale_and_the_choices_are_not()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/engineering/compare?by=line");
        await Assertions.Expect(desk.Page.Locator("section.panel:has(table)")).ToBeVisibleAsync();
        await desk.Page.EvaluateAsync("() => document.querySelector('main').setAttribute('aria-busy', 'true')");
        await desk.Page.WaitForFunctionAsync(
            "() => getComputedStyle(document.querySelector('section.panel:has(table)')).opacity < 0.5");
        Assert.Equal("1", await desk.Page.Locator("section.panel:has(select)").First
            .EvaluateAsync<string>("panel => getComputedStyle(panel).opacity"));
        await desk.PictureAsync("engineering-compare-loading");
    }
}
