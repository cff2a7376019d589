using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What a hand does where PINs are set and typed.</summary>
internal static class PinHand
{
    /// <summary>Sets the PIN of whoever enters, and waits until the device says so.</summary>
    public static async Task SetPinAsync(this IPage page, string pin)
    {
        await page.EnterNewPinAsync(pin, pin);
        await Assertions.Expect(page.GetByText("The PIN is set on this device.")).ToBeVisibleAsync();
    }

    /// <summary>Types a new PIN and its repetition, and sets it.</summary>
    public static async Task EnterNewPinAsync(this IPage page, string pin, string again)
    {
        await page.ShowAsync("#/pin");
        await page.GetByLabel("New PIN").TapAsync();
        await page.PressAsync(pin);
        await page.GetByLabel("The same again").TapAsync();
        await page.PressAsync(again);
        await page.GetByRole(AriaRole.Button, new() { Name = "Set the PIN" }).TapAsync();
    }

    /// <summary>Taps the head's name, then one who has a PIN here.</summary>
    public static async Task ChoosePersonAsync(this IPage page, string name)
    {
        await page.Locator("#who").TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = name }).TapAsync();
    }

    /// <summary>Types a PIN with one digit too many, deletes that, and goes on.</summary>
    public static async Task TypePinAsync(this IPage page, string pin)
    {
        await page.PressAsync(pin + "0");
        await page.GetByRole(AriaRole.Button, new() { Name = "Delete one" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Go on" }).TapAsync();
    }

    /// <summary>Taps the keys of digits.</summary>
    private static async Task PressAsync(this IPage page, string digits)
    {
        foreach (var digit in digits)
            await page.GetByRole(AriaRole.Button, new() { Name = digit.ToString(), Exact = true }).TapAsync();
    }
}
