using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;

namespace WearWatch.Browser.Tests;

/// <summary>The pages about people, at a desk and on a phone: from the set-up to the switch by PIN, without barriers.</summary>
public sealed class PeopleTests(Screen screen)
{
    private const string Password = "twelve links of chain";

    // A server of its own: once somebody is set up, the other tests' dashboard would ask them all to sign in.
    [Fact]
    public async Task A_plant_is_set_up_people_are_added_and_a_shared_tablet_is_switched_by_PIN()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        await using var desk = await screen.AtDeskAsync(address: server.Address);
        await SeeAsync(desk, server.Address + "/people/first", "people-first-desk");
        await desk.Page.GetByLabel("Code of the console").FillAsync(await server.Code);
        await desk.Page.GetByLabel("Your name").FillAsync("Ada");
        await desk.Page.GetByLabel("Password").FillAsync(Password);
        await desk.Page.GetByLabel("The same again").FillAsync(Password);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Ada", Exact = true })).ToBeVisibleAsync();

        await using var phone = await screen.OnPhoneAsync(address: server.Address);
        await SeeAsync(phone, server.Address + "/people/sign-in", "people-sign-in-phone");
        await SignInAsync(phone.Page);
        await phone.GoAsync("/chains");
        var pin = desk.Page.Locator("form", new() { HasText = "New PIN" });
        await pin.GetByLabel("Present password").FillAsync(Password);
        await pin.GetByLabel("New PIN").FillAsync("2580");
        await pin.GetByLabel("The same again").FillAsync("2580");
        await pin.GetByRole(AriaRole.Button, new() { Name = "Set the PIN" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("Set. Every other device has to sign in anew.")).ToBeVisibleAsync();
        await phone.Page.WaitForURLAsync("**/people/sign-in?back=*"); // the open page heard of it, untouched
        await SignInAsync(phone.Page);
        await phone.Page.WaitForURLAsync(server.Address + "/chains");
        await SeeAsync(desk, server.Address + "/people/me", "people-me-desk");
        await SeeAsync(desk, server.Address + "/people", "people-desk");
        await SeeAsync(desk, server.Address + "/people/1", "people-one-desk");
        await SeeAsync(desk, server.Address + "/people/api-keys", "people-keys-desk");
        foreach (var page in new[] { "me", "tablets" })
            await SeeAsync(phone, $"{server.Address}/people/{page}", $"people-{page}-phone");
        await phone.Page.GetByLabel("Where it hangs").FillAsync("Press line");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Make it a shared tablet" }).TapAsync();
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "Who works now?" })).ToBeVisibleAsync();
        await SeeAsync(phone, server.Address + "/people/switch", "people-switch-phone");
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Ada", Exact = true }).TapAsync();
        await TypeAsync(phone.Page, "2581");
        await Assertions.Expect(phone.Page.GetByText("The PIN is not right")).ToBeVisibleAsync();
        await phone.PictureAsync("people-pin-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await PressAsync(phone.Page, "259");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "delete the last digit" }).TapAsync();
        await TypeAsync(phone.Page, "80");
        await phone.Page.ReadyAsync();
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Link, new() { Name = "Switch" })).ToBeVisibleAsync();
        await phone.PictureAsync("people-switched-floor-phone", whole: false);
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Switch" }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("signed in: Ada")).ToBeVisibleAsync();
        Assert.Empty(phone.Complaints);
        Assert.Empty(desk.Complaints);
    }

    private static async Task SeeAsync(Visit visit, string address, string picture)
    {
        await visit.Page.GotoAsync(address);
        await visit.PictureAsync(picture);
        Assert.Empty(await visit.BarriersAsync());
    }

    private static async Task SignInAsync(IPage page)
    {
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).TapAsync();
        await page.WaitForURLAsync(url => !url.Contains("/people/sign-in", StringComparison.Ordinal));
    }

    private static async Task TypeAsync(IPage page, string pin)
    {
        await PressAsync(page, pin);
        await page.GetByRole(AriaRole.Button, new() { Name = "Go on" }).TapAsync();
    }

    private static async Task PressAsync(IPage page, string digits)
    {
        foreach (var digit in digits)
            await page.GetByRole(AriaRole.Button, new() { Name = digit.ToString(), Exact = true }).TapAsync();
    }
}
