using System.Text.Json;
using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;

namespace WearWatch.Browser.Tests;

/// <summary>
/// Signing in by passkey, with the device that Chromium itself plays (the virtual authenticator of W3C Web Authentication,
/// section 11).
/// </summary>
public sealed class PasskeyTests(Screen screen)
{
    private const string Password = "twelve links of chain";

    [Fact]
    public async Task A_passkey_is_made_with_the_password_lets_in_without_it_and_no_more_when_it_is_withdrawn()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        var address = server.Address.Replace("127.0.0.1", "localhost", StringComparison.Ordinal); // a passkey belongs to a name
        await using var phone = await screen.OnPhoneAsync(address: address);
        var page = phone.Page;
        await SetUpAsync(page, server, address);
        await HaveDeviceAsync(page);

        await MakeAsync(page, "a wrong password");
        await Assertions.Expect(page.GetByText("The present password is not right.")).ToBeVisibleAsync();
        await MakeAsync(page, Password);
        await Assertions.Expect(page.GetByText("Made. From now on you can sign in with it.")).ToBeVisibleAsync();
        await phone.PictureAsync("people-passkey-phone");
        Assert.Empty(await phone.BarriersAsync());

        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out", Exact = true }).TapAsync();
        await page.WaitForURLAsync("**/people/sign-in?left=true");
        await page.GotoAsync(address + "/people/sign-in?back=%2Fchains");
        await phone.PictureAsync("people-sign-in-passkey-phone");
        Assert.Empty(await phone.BarriersAsync());
        await UseAsync(page);
        await page.WaitForURLAsync("**/chains");

        await page.GotoAsync(address + "/people/1");
        await phone.PictureAsync("people-one-passkey-phone");
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Withdraw the passkey Ada's phone" }).TapAsync();
        await Assertions.Expect(page.GetByText("Withdrawn. Every other device has to sign in anew.")).ToBeVisibleAsync();
        await page.GotoAsync(address + "/people/me");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out", Exact = true }).TapAsync();
        await page.WaitForURLAsync("**/people/sign-in?left=true");
        await UseAsync(page);
        await Assertions.Expect(page.GetByText("This passkey is not known here")).ToBeVisibleAsync();
        Assert.All(phone.Complaints, c => Assert.Contains("400", c, StringComparison.Ordinal)); // the wrong password's
    }

    [Fact]
    public async Task Where_the_address_is_a_number_no_passkey_is_offered_and_the_page_says_why()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        await using var desk = await screen.AtDeskAsync(address: server.Address);
        await SetUpAsync(desk.Page, server);
        await Assertions.Expect(desk.Page.GetByText("Here none can be made")).ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByLabel("Name of the passkey")).ToBeHiddenAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Button, new() { Name = "Make a passkey" })).ToBeHiddenAsync();
    }

    private static async Task SetUpAsync(IPage page, ServerProcess server, string? address = null)
    {
        await page.GotoAsync((address ?? server.Address) + "/people/first");
        await page.GetByLabel("Code of the console").FillAsync(await server.Code);
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByLabel("The same again").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await page.WaitForURLAsync("**/people/me");
    }

    /// <summary>Gives the page's browser a device that holds passkeys and is unlocked at once.</summary>
    private static async Task HaveDeviceAsync(IPage page)
    {
        var browser = await page.Context.NewCDPSessionAsync(page);
        await browser.SendAsync("WebAuthn.enable");
        await browser.SendAsync("WebAuthn.addVirtualAuthenticator", new()
        {
            ["options"] = JsonSerializer.Deserialize<JsonElement>(
                """
                {
                  "protocol": "ctap2", "transport": "internal", "hasResidentKey": true, "hasUserVerification": true,
                  "isUserVerified": true, "automaticPresenceSimulation": true
                }
                """),
        });
    }

    private static async Task MakeAsync(IPage page, string password)
    {
        var form = page.Locator("form", new() { HasText = "Name of the passkey" });
        await form.GetByLabel("Name of the passkey").FillAsync("Ada's phone");
        await form.GetByLabel("Present password").FillAsync(password);
        await form.GetByRole(AriaRole.Button, new() { Name = "Make a passkey" }).TapAsync();
    }

    private static Task UseAsync(IPage page) =>
        page.GetByRole(AriaRole.Button, new() { Name = "Sign in with a passkey" }).TapAsync();
}
