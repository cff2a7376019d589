using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Storage.Rows;
using WearWatch.Wear;
using WearWatch.Worker.Tests.Mailing;

namespace WearWatch.Browser.Tests;

/// <summary>A planner asks for notices by mail, has one, follows its link on another device and signs in there.</summary>
public sealed class MailTests(Screen screen) : IAsyncLifetime
{
    private readonly MailReceiver server = new();
    private DashboardHost host = null!;
    private string address = "";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        server.Start();
        host = new DashboardHost { Settings = [.. server.Settings, ("Mail:Every", "00:00:00.2")] };
        address = host.Listen();
        await NotifyingPlant.FillAsync(host, "MAIL");
    }

    public async ValueTask DisposeAsync()
    {
        await host.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task What_is_chosen_on_ones_own_page_comes_and_leads_to_the_chain_past_the_sign_in()
    {
        await using var desk = await screen.AtDeskAsync(address: address);
        var page = desk.Page;
        await SignInAsync(page, "/people/me");
        await page.GetByLabel("Mail address").FillAsync("ada@mill.example");
        await page.GetByRole(AriaRole.Combobox, new() { Name = "When" }).SelectOptionAsync("each notice at once");
        await page.GetByLabel("The day's mail at").FillAsync("05:30");
        await page.GetByLabel("Quiet from").FillAsync("22:00");
        await page.GetByLabel("Quiet until").FillAsync("05:00");
        await page.GetByLabel("Pallet line").CheckAsync();
        await page.GetByLabel("no line").CheckAsync();
        await page.GetByLabel("Limit near").CheckAsync();
        await Panel(page).GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(Panel(page).GetByText("Saved.")).ToBeVisibleAsync();
        await page.GotoAsync(address + "/people/me");
        await Assertions.Expect(page.GetByLabel("The day's mail at")).ToHaveValueAsync("05:30");
        await Assertions.Expect(page.GetByLabel("Quiet from")).ToHaveValueAsync("22:00");
        await Assertions.Expect(page.GetByLabel("Quiet until")).ToHaveValueAsync("05:00");
        await Assertions.Expect(page.GetByLabel("Pallet line")).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("no line")).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("Limit near")).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("Lubrication due")).Not.ToBeCheckedAsync();

        await Panel(page).GetByRole(AriaRole.Button, new() { Name = "Send a test mail" }).ClickAsync();
        await Assertions.Expect(Panel(page).GetByText("On its way.")).ToBeVisibleAsync();
        Assert.EndsWith("Test mail", (await NextAsync(1)).Subject, StringComparison.Ordinal);
        await desk.PictureAsync("mail-desk");
        Assert.Empty(await desk.BarriersAsync());

        await RaiseAsync(NoticeKind.RateHasRisen);
        await RaiseAsync(NoticeKind.LimitNear);
        var mail = await NextAsync(2);
        Assert.Contains("Limit near · urgent", mail.Subject, StringComparison.Ordinal);
        Assert.DoesNotContain("Wears faster", mail.TextBody, StringComparison.Ordinal);

        await using var phone = await screen.OnPhoneAsync(address: address);
        await phone.Page.SetContentAsync(mail.HtmlBody!.Replace("https://wear.mill.example", address, StringComparison.Ordinal));
        await phone.PictureAsync("mail-phone");
        await phone.Page.GetByRole(AriaRole.Link).ClickAsync();
        await FillSignInAsync(phone.Page);
        await phone.Page.WaitForURLAsync(address + "/chains/MAIL-1");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "MAIL-1" }).First).ToBeVisibleAsync();
        await phone.Page.GotoAsync(address + "/people/me");
        await phone.PictureAsync("mail-choice-phone");
        Assert.Empty(await phone.BarriersAsync());
        Assert.Empty(await phone.OverTheEdgeAsync());
        Assert.Empty(desk.Complaints);
    }

    private static ILocator Panel(IPage page) => page.Locator("section", new() { HasText = "Notices by mail" }).Last;

    private async Task SignInAsync(IPage page, string back)
    {
        await page.GotoAsync(address + back);
        await FillSignInAsync(page);
        await page.WaitForURLAsync(address + back);
    }

    private static async Task FillSignInAsync(IPage page)
    {
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(NotifyingPlant.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
    }

    /// <summary>Raises an urgent notice at the first chain, after the moment of the choice.</summary>
    private async Task RaiseAsync(NoticeKind kind)
    {
        await using var db = host.Services.GetRequiredService<Storage.Engines.WearStore>().CreateDbContext();
        db.Notices.Add(new NoticeRow
        {
            ChainId = db.Chains.Single(c => c.Name == "MAIL-1").Id,
            Kind = kind,
            Urgent = true,
            Why = $"it wears",
            WhatToDo = $"look",
            RaisedAt = TimeProvider.System.GetUtcNow(),
        });
        await db.SaveChangesAsync(Ct);
    }

    private async Task<MimeKit.MimeMessage> NextAsync(int count)
    {
        for (var wait = 0; wait < 600 && server.Mails.Count < count; wait++) await Task.Delay(100, Ct);
        return server.Mails[count - 1];
    }
}
