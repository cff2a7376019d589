using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What a hand does on the floor's screens.</summary>
internal static class FloorPhone
{
    /// <summary>Waits until the phone could work without signal: the worker runs and the pack is there.</summary>
    public static async Task ReadyAsync(this IPage page)
    {
        await page.Locator("html[data-worker=ready][data-shown]")
            .WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.WaitForFunctionAsync("async () => (await caches.keys()).length > 0");
    }

    /// <summary>Goes to a screen of the floor that is open already.</summary>
    public static async Task ShowAsync(this IPage page, string hash)
    {
        await page.EvaluateAsync("hash => { document.documentElement.dataset.shown = ''; if (location.hash === hash) "
            + "dispatchEvent(new Event('hashchange')); else location.hash = hash; }", hash);
        await page.Locator($"html[data-shown='{hash}']")
            .WaitForAsync(new() { State = WaitForSelectorState.Attached });
    }

    /// <summary>Enters a reading and waits until the phone says that it is safe.</summary>
    public static async Task MeasureAsync(this IPage page, int chainId, string counter, string length)
    {
        await page.ShowAsync($"#/chain/{chainId}/measure");
        await page.GetByLabel("Hour counter").FillAsync(counter);
        await page.GetByLabel("Length", new() { Exact = true }).FillAsync(length);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToBeVisibleAsync();
    }

    /// <summary>Types on the pad that stands under the fields.</summary>
    public static async Task TapDigitsAsync(this IPage page, string text)
    {
        foreach (var digit in text)
        {
            var name = digit switch
            {
                '.' => "decimal point",
                ',' => "Dezimalkomma",
                ' ' => "space",
                '/' => "fraction stroke",
                _ => digit.ToString(),
            };
            await page.Locator(".pad").GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).TapAsync();
        }
    }
}
