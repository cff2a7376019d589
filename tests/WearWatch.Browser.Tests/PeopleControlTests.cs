using System.Net;
using System.Net.Http.Headers;
using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;

namespace WearWatch.Browser.Tests;

/// <summary>An administrator gives roles and keys; a person stays signed in on a device of her own.</summary>
public sealed class PeopleControlTests(Screen screen)
{
    private const string Password = "twelve links of chain";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // A server of its own: once somebody is set up, the other tests' dashboard would ask them all to sign in.
    [Fact]
    public async Task Roles_are_saved_a_key_opens_the_API_and_staying_signed_in_is_for_those_who_ask_for_it()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        await using var desk = await screen.AtDeskAsync(address: server.Address);
        var page = desk.Page;
        await page.GotoAsync(server.Address + "/people/first");
        await page.GetByLabel("Code of the console").FillAsync(await server.Code);
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByLabel("The same again").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Ada", Exact = true })).ToBeVisibleAsync();

        await page.GotoAsync(server.Address + "/people");
        await page.GetByLabel("Name", new() { Exact = false }).First.FillAsync("Ben");
        await page.GetByLabel("First password").FillAsync("a first word for Ben");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("Ben can sign in now.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Ben", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".page-head").GetByText("reads only")).ToBeVisibleAsync();
        await Role(page, "planner").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the roles" }).ClickAsync();
        await Assertions.Expect(page.GetByText("The roles are saved, and count at once.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(Role(page, "planner")).ToBeCheckedAsync();
        await Assertions.Expect(Role(page, "engineer")).Not.ToBeCheckedAsync();

        await page.GotoAsync(server.Address + "/people/api-keys");
        await page.GetByLabel("Name of the machine").FillAsync("Gateway of the press");
        await Role(page, "technician").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the key" }).ClickAsync();
        var key = await page.Locator(".new-key").TextContentAsync();
        Assert.Equal(HttpStatusCode.Unauthorized, await AskAsync(server.Address, null));
        Assert.Equal(HttpStatusCode.OK, await AskAsync(server.Address, key));
        await page.GetByRole(AriaRole.Button, new() { Name = "Withdraw Gateway of the press" }).ClickAsync();
        await Assertions.Expect(page.GetByText("withdrawn ")).ToBeVisibleAsync();
        Assert.Equal(HttpStatusCode.Unauthorized, await AskAsync(server.Address, key));

        Assert.False(await StaysAsync(server.Address, asked: false));
        Assert.True(await StaysAsync(server.Address, asked: true));
        Assert.Empty(desk.Complaints);
    }

    private static ILocator Role(IPage page, string name) =>
        page.Locator($"label.tick:has(strong:text-is('{name}')) input");

    private static async Task<HttpStatusCode> AskAsync(string address, string? key)
    {
        using var client = new HttpClient();
        if (key is not null) client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return (await client.GetAsync(address + "/api/v1/chains", Ct)).StatusCode;
    }

    /// <summary>Signs in on another device; whether its browser keeps the session when it is closed.</summary>
    private async Task<bool> StaysAsync(string address, bool asked)
    {
        await using var device = await screen.AtDeskAsync(address: address);
        await device.Page.GotoAsync(address + "/people/sign-in");
        await device.Page.GetByLabel("Your name").FillAsync("Ada");
        await device.Page.GetByLabel("Password").FillAsync(Password);
        await device.Page.GetByLabel("stay signed in on this device for 14 days").SetCheckedAsync(asked);
        await device.Page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
        await device.Page.WaitForURLAsync(url => !url.Contains("/people/sign-in", StringComparison.Ordinal));
        var kept = TimeProvider.System.GetUtcNow().AddDays(13).ToUnixTimeSeconds();
        return (await device.Page.Context.CookiesAsync())
            .Any(c => c.Expires > kept && c.Expires < kept + TimeSpan.FromDays(2).TotalSeconds && c.HttpOnly);
    }
}
