using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>Whose entry it is: also when another person takes the phone without signal, and when its clock is wrong.</summary>
public sealed class PersonTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    [Fact]
    public async Task What_another_person_enters_without_signal_waits_for_that_persons_sign_in()
    {
        var (id, _) = await plant.TakeInAsync("WHOSE");
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        var me = """{"id":1,"name":"Ann Berg"}""";
        await page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(new() { ContentType = "application/json", Body = me }));
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("AB");
        await page.Context.SetOfflineAsync(true);
        await page.Locator("#who").TapAsync();
        await page.GetByLabel("Your name").FillAsync("Ben");
        await page.GetByRole(AriaRole.Button, new() { Name = "I enter now" }).TapAsync();
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("B?");
        await phone.PictureAsync("floor-who-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.MeasureAsync(id, "5000", "1234.5");
        await page.ShowAsync("#/kept");
        await page.Context.SetOfflineAsync(false);
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.GetByText("These wait for Ben")).ToBeVisibleAsync();
        Assert.Equal(5, (await plant.ReadingsAsync("WHOSE-1")).Count);
        me = """{"id":2,"name":"Ben"}""";
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("B");
        Assert.Equal("Ben", (await plant.ReadingsAsync("WHOSE-1"))[^1].GetProperty("told_by").GetString());
    }

    [Fact]
    public async Task A_phone_whose_clock_is_a_day_fast_tells_the_servers_time()
    {
        var (id, _) = await plant.TakeInAsync("CLOCK");
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.AddInitScriptAsync("""
            const [real, ahead] = [Date.now.bind(Date), 864e5];
            const Real = Date;
            globalThis.Date = class extends Real {
              constructor(...told) { super(...(told.length === 0 ? [real() + ahead] : told)); }
              static now() { return real() + ahead; }
            };
            """);
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        await page.ShowAsync("#/kept");
        await Assertions.Expect(page.GetByText("This phone’s clock is 1440 min fast")).ToBeVisibleAsync();
        await page.MeasureAsync(id, "5000", "1234.5");
        var told = (await plant.ReadingsAsync("CLOCK-1", count: 6))[^1].GetProperty("taken_at").GetDateTimeOffset();
        Assert.InRange((TimeProvider.System.GetUtcNow() - told).TotalMinutes, -1, 10);
    }
}
