using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The round of the day, on the phone and at the desk.</summary>
public sealed class RoundTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    [Fact]
    public async Task The_round_of_the_day_is_taken_on_the_phone_and_planned_at_the_desk()
    {
        await NotOverMidnightAsync();
        var (id, _) = await plant.TakeInAsync("WALK");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        var line = phone.Page.Locator(".line", new() { HasText = "Pallet line" });
        await Assertions.Expect(line.GetByRole(AriaRole.Link, new() { Name = "WALK-1" })).ToBeVisibleAsync();
        await line.GetByRole(AriaRole.Button, new() { Name = "I take it" }).TapAsync();
        await Assertions.Expect(line.GetByRole(AriaRole.Button, new() { Name = "Give it back" })).ToBeVisibleAsync();
        await phone.PictureAsync("floor-round-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/rounds");
        await Assertions.Expect(desk.Page.GetByText("taken by").First).ToBeVisibleAsync();
        await desk.PictureAsync("rounds-desk");
        Assert.Empty(await desk.BarriersAsync());
        await phone.Page.MeasureAsync(id, "5000", "1234.5");
        await phone.Page.ShowAsync("#/");
        await Assertions.Expect(line.GetByText("measure, done").First).ToBeVisibleAsync();
        Assert.Empty(phone.Complaints);
        Assert.Empty(desk.Complaints);
    }

    /// <summary>Waits until the day that begins shortly has begun: at midnight a round that was taken is free again.</summary>
    private async Task NotOverMidnightAsync()
    {
        var toMidnight = TimeSpan.FromDays(1) - screen.Host.Services.GetRequiredService<TimeProvider>().GetLocalNow().TimeOfDay;
        if (toMidnight < TimeSpan.FromMinutes(2)) await Task.Delay(toMidnight, TestContext.Current.CancellationToken);
    }
}
