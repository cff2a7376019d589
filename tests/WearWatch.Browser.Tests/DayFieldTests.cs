using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A day is typed as the person's language writes it, whatever the browser's own form is, or taken from its calendar.
/// </summary>
public sealed class DayFieldTests(Screen screen, SortedMill mill)
{
    [Fact]
    public async Task A_German_planner_types_a_day_takes_one_from_the_calendar_and_hears_what_is_none()
    {
        await using var desk = await screen.AtDeskAsync(address: await mill.OpenAsync(), locale: "de");
        await desk.GoAsync("/engineering/compare");
        var (page, from) = (desk.Page, desk.Page.GetByLabel("Montiert ab").First);
        await from.FillAsync("4.3.2025");
        await from.PressAsync("Tab");
        await page.WaitForURLAsync("**2025-03-04**");
        await Assertions.Expect(from).ToHaveValueAsync("4.3.2025");
        await page.GetByLabel("Kalender").First.FillAsync("2025-11-30");
        await page.WaitForURLAsync("**2025-11-30**");
        await Assertions.Expect(from).ToHaveValueAsync("30.11.2025");
        await from.FillAsync("31.2.2025");
        await from.PressAsync("Tab");
        await Assertions.Expect(page.GetByText("'31.2.2025' ist kein Tag. Schreiben Sie ihn wie 30.11.2025.")).ToBeVisibleAsync();
        await desk.PictureAsync("day-field-desk");
        Assert.Contains("2025-11-30", page.Url, StringComparison.Ordinal);
        Assert.Empty(await desk.BarriersAsync());
        await from.FillAsync("");
        await from.PressAsync("Tab");
        await page.WaitForURLAsync(url => !url.Contains("2025-11-30", StringComparison.Ordinal));
        await Assertions.Expect(page.GetByText("ist kein Tag")).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }
}
