using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>Every screen of the phone in each width and look: nothing to be pushed sideways, and no barrier.</summary>
public sealed class FloorLookTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    [Theory]
    [InlineData(360, "light")]
    [InlineData(390, "dark")]
    [InlineData(768, "sun")]
    public async Task Every_screen_fits_and_has_no_barrier(int width, string look)
    {
        var (id, _) = await plant.TakeInAsync("LOOK" + width);
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.AddInitScriptAsync($"localStorage.setItem('wearwatch-floor-look', '{look}');");
        await page.SetViewportSizeAsync(width, 780);
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        string[] screens =
            ["", "oil", "find", "kept", "who", "pin", "scan", $"chain/{id}/", $"chain/{id}/measure", $"chain/{id}/inspect",
                $"chain/{id}/do", $"chain/{id}/do?what=oiling"];
        List<string> faults = [];
        foreach (var hash in screens.Select(s => "#/" + s))
        {
            await page.ShowAsync(hash);
            await phone.PictureAsync($"floor-{width}-{look}-{hash.Split('/')[^1].Split('?')[0]}", whole: false);
            faults.AddRange((await phone.BarriersAsync()).Append(await phone.OverTheEdgeAsync()).Where(f => f.Length > 0)
                .Select(fault => $"{hash}: {fault}"));
        }

        Assert.Empty(faults);
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task The_first_field_of_a_measurement_is_in_sight_at_once_and_who_decides_stands_with_how_to_measure()
    {
        var (id, _) = await plant.TakeInAsync("FIRST");
        await using var phone = await plant.PhoneAsync();
        var page = phone.Page;
        await page.SetViewportSizeAsync(360, 740);
        await page.GotoAsync($"{screen.Address}/floor/");
        await page.ReadyAsync();
        await page.ShowAsync($"#/chain/{id}/measure");
        await phone.PictureAsync("floor-first-field-phone", whole: false);
        var field = (await page.GetByLabel("Hour counter").BoundingBoxAsync())!;
        var foot = (await page.Locator(".foot").BoundingBoxAsync())!;
        Assert.Equal(0, await page.EvaluateAsync<double>("() => scrollY"));
        Assert.InRange(field.Y + field.Height, 100, foot.Y);
        await Assertions.Expect(page.Locator(".caution")).ToContainTextAsync("Stop, isolate, lock and tag");
        await Assertions.Expect(page.Locator(".caution")).Not.ToContainTextAsync("WearWatch informs");
        await Assertions.Expect(page.Locator(".how")).ToContainTextAsync("WearWatch informs");
    }

    [Fact]
    public async Task The_chains_page_the_rounds_and_the_card_need_no_pushing_sideways_on_a_narrow_phone()
    {
        await plant.TakeInAsync("NARROW");
        await using var phone = await screen.OnPhoneAsync();
        await phone.Page.SetViewportSizeAsync(360, 780);
        List<string> faults = [];
        foreach (var path in new[] { "/chains/NARROW-1", "/rounds", "/chains/NARROW-1/master-data" })
        {
            await phone.GoAsync(path);
            await phone.PictureAsync("narrow-" + path.Split('/')[^1]);
            if (await phone.OverTheEdgeAsync() is { Length: > 0 } over) faults.Add($"{path}: {over}");
        }

        Assert.Empty(faults);
    }
}
