using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Plant.People;

namespace WearWatch.Browser.Tests;

/// <summary>A crew signs in with the accounts of its company, at the company's own page, and out there too.</summary>
public sealed class CompanyTests(Screen screen) : IAsyncLifetime
{
    private const string Password = "twelve links of chain";
    private readonly CompanyProvider provider = new();
    private DashboardHost host = null!;
    private string address = "";

    public async ValueTask InitializeAsync()
    {
        await provider.StartAsync();
        provider.Accounts["17"] = new("Jan Stern", "jstern", "chain-crew");
        provider.Accounts["18"] = new("Ada Holm", "aholm", "planning");
        host = new DashboardHost { Settings = provider.Settings };
        address = host.Listen();
        using var scope = host.Services.CreateScope();
        await scope.ServiceProvider.GetRequiredService<PeopleDesk>().AddFirstAsync("Ada", Password);
    }

    public async ValueTask DisposeAsync()
    {
        await host.DisposeAsync();
        await provider.DisposeAsync();
    }

    [Fact]
    public async Task A_fitter_comes_in_by_the_companys_page_and_leaves_by_it()
    {
        await using var phone = await screen.OnPhoneAsync(address: address);
        var page = phone.Page;
        await page.GotoAsync(address + "/enter");
        await phone.PictureAsync("company-sign-in-phone");
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "Sign in with mill account" }).TapAsync();
        await SignInAtMillAsync(page, "17");
        await page.WaitForURLAsync(address + "/enter");
        await page.GotoAsync(address + "/people/me");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Jan Stern" })).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("You have no password here").First).ToBeVisibleAsync();
        await phone.PictureAsync("company-me-phone");
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out", Exact = true }).TapAsync();

        // By way of the provider, which has forgotten the person then and asks again.
        await page.WaitForURLAsync(address + "/people/sign-in");
        await page.GetByRole(AriaRole.Link, new() { Name = "Sign in with mill account" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Mill sign-in" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Whoever_has_a_password_connects_the_account_and_an_administrator_disconnects_it()
    {
        await using var desk = await screen.AtDeskAsync(address: address);
        var page = desk.Page;
        await page.GotoAsync(address + "/people/me");
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
        await page.WaitForURLAsync(address + "/people/me");
        await page.GetByRole(AriaRole.Link, new() { Name = "Connect the account" }).ClickAsync();
        await SignInAtMillAsync(page, "18");
        await Assertions.Expect(page.GetByText("It is connected: you sign in with it.")).ToBeVisibleAsync();
        // Nobody else administers, so the groups do not take that role away.
        await page.GotoAsync(address + "/people/1");
        await Assertions.Expect(page.GetByText("The groups of the company's directory decide")).ToBeVisibleAsync();
        await desk.PictureAsync("company-person-desk");
        Assert.Empty(await desk.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Disconnect the account" }).ClickAsync();
        await page.GotoAsync(address + "/people/me");
        await page.WaitForURLAsync("**/people/sign-in?back=*");
    }

    [Fact]
    public async Task Who_left_without_a_script_finds_the_link_to_leave_there_too()
    {
        await using var plain = await screen.AtDeskAsync(address: address);
        var page = plain.Page;
        await page.RouteAsync("**/leave*.js", request => request.AbortAsync());
        await page.GotoAsync(address + "/people/sign-in");
        await page.GetByRole(AriaRole.Link, new() { Name = "Sign in with mill account" }).ClickAsync();
        await SignInAtMillAsync(page, "17");
        await page.GotoAsync(address + "/people/me");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Sign out of the company account" }).ClickAsync();
        await page.WaitForURLAsync(address + "/people/sign-in");
    }

    private static async Task SignInAtMillAsync(IPage page, string account)
    {
        await page.GetByLabel("Account").FillAsync(account);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in at the mill" }).ClickAsync();
    }
}
