using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Storage.Rows;
using WearWatch.Wear;
using WearWatch.Worker.Tests.Webhooks;

namespace WearWatch.Browser.Tests;

/// <summary>An administrator enters a receiver, sees events arrive, fail and arrive again, and takes it away.</summary>
public sealed class WebhookTests(Screen screen) : IAsyncLifetime
{
    private readonly WebhookReceiver receiver = new();
    private DashboardHost host = null!;
    private string address = "";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        receiver.Start();
        host = new DashboardHost { Settings = [("Webhooks:Loopback", "true"), ("Webhooks:Every", "00:00:00.2")] };
        address = host.Listen();
        await NotifyingPlant.FillAsync(host, "HOOK");
    }

    public async ValueTask DisposeAsync()
    {
        await host.DisposeAsync();
        await receiver.DisposeAsync();
    }

    [Fact]
    public async Task A_receiver_is_entered_has_a_test_and_a_notice_fails_for_a_while_and_is_sent_to_again()
    {
        await using var desk = await screen.AtDeskAsync(address: address);
        var page = desk.Page;
        await SignInAsync(page);
        await page.GetByRole(AriaRole.Link, new() { Name = "Webhooks" }).ClickAsync();
        await page.GetByLabel("Name of the receiver").FillAsync("Orders");
        await page.GetByLabel("Its address").FillAsync("https://169.254.169.254/latest");
        await Button(page, "Add").ClickAsync();
        await Assertions.Expect(page.GetByText("Nothing is sent there.")).ToBeVisibleAsync();
        await page.GetByLabel("Its address").FillAsync(receiver.Url);
        await page.GetByLabel("notice raised").CheckAsync();
        await page.GetByLabel("Pallet line").CheckAsync();
        await page.GetByLabel("no line").CheckAsync();
        await Button(page, "Add").ClickAsync();
        var secret = await page.Locator(".new-key").TextContentAsync();
        Assert.StartsWith("whsec_", secret, StringComparison.Ordinal);
        await desk.PictureAsync("webhooks-desk");
        Assert.Empty(await desk.BarriersAsync());

        await page.GetByRole(AriaRole.Link, new() { Name = "Orders", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("notice raised")).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("notice ended")).Not.ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("Pallet line")).ToBeCheckedAsync();
        Assert.DoesNotContain(secret!, await page.ContentAsync(), StringComparison.Ordinal);
        await Button(page, "Send a test").ClickAsync();
        await Assertions.Expect(page.GetByText("On its way.")).ToBeVisibleAsync();
        Assert.Equal("wearwatch.test.v1", TypeOf(await NextAsync(1)));
        await RaiseAsync(NoticeKind.LimitNear);
        Assert.Equal("wearwatch.notice.raised.v1", TypeOf(await NextAsync(2)));
        await LogAsync(page);
        await Assertions.Expect(Line(page, "notice raised")).ToContainTextAsync("delivered");
        await desk.PictureAsync("webhook-log-desk");
        Assert.Empty(await desk.BarriersAsync());

        receiver.Answer = (_, _) => 503;
        await RaiseAsync(NoticeKind.RateHasRisen);
        await NextAsync(3);
        await LogAsync(page);
        await page.GetByLabel("Receiver").SelectOptionAsync("Orders");
        await page.GetByLabel("Delivery", new() { Exact = true }).SelectOptionAsync("waiting");
        await Button(page, "Show").ClickAsync();
        await Assertions.Expect(page.Locator("tbody tr")).ToHaveCountAsync(1);
        await Assertions.Expect(Line(page, "notice raised")).ToContainTextAsync("The receiver answered 503.");
        receiver.Answer = (_, _) => 204;
        await Button(page, "Send again: HOOK-1").ClickAsync();
        await UntilTakenAsync(3);
        Assert.Equal(receiver.All[^1].Id, receiver.All[2].Id);

        await page.GotoAsync(address + "/people/webhooks");
        await page.GetByRole(AriaRole.Link, new() { Name = "Orders", Exact = true }).ClickAsync();
        await Button(page, "Renew the secret").ClickAsync();
        Assert.NotEqual(secret, await page.Locator(".new-key").TextContentAsync());
        await Button(page, "Remove the receiver").ClickAsync();
        await Assertions.Expect(page.GetByText("Pause it first.")).ToBeVisibleAsync();
        await page.GetByLabel("paused: events wait").CheckAsync();
        await Button(page, "Save").ClickAsync();
        await Assertions.Expect(page.GetByText("Saved.")).ToBeVisibleAsync();
        await Button(page, "Remove the receiver").ClickAsync();
        await Assertions.Expect(page.GetByText("No receiver yet.")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task The_pages_of_webhooks_stand_on_a_phone()
    {
        await using var phone = await screen.OnPhoneAsync(address: address);
        await SignInAsync(phone.Page);
        await phone.Page.GotoAsync(address + "/people/webhooks");
        await phone.PictureAsync("webhooks-phone");
        Assert.Empty(await phone.BarriersAsync());
        Assert.Empty(await phone.OverTheEdgeAsync());
    }

    private static ILocator Button(IPage page, string name) =>
        page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    private static ILocator Line(IPage page, string what) => page.Locator("tbody tr", new() { HasText = what }).First;

    private async Task LogAsync(IPage page)
    {
        await page.GotoAsync(address + "/people/webhooks");
        await page.GetByRole(AriaRole.Link, new() { Name = "Delivery log" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Delivery log" })).ToBeVisibleAsync();
    }

    private async Task SignInAsync(IPage page)
    {
        await page.GotoAsync(address + "/people/me");
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(NotifyingPlant.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
        await page.WaitForURLAsync(address + "/people/me");
    }

    private async Task RaiseAsync(NoticeKind kind)
    {
        await using var db = host.Services.GetRequiredService<Storage.Engines.WearStore>().CreateDbContext();
        db.Notices.Add(new NoticeRow
        {
            ChainId = db.Chains.Single(c => c.Name == "HOOK-1").Id,
            Kind = kind,
            Why = $"it wears",
            WhatToDo = $"look",
            RaisedAt = TimeProvider.System.GetUtcNow(),
        });
        await db.SaveChangesAsync(Ct);
    }

    private static string TypeOf(WebhookReceiver.Arrived arrived) => (string)JsonNode.Parse(arrived.Body)!["type"]!;

    private async Task<WebhookReceiver.Arrived> NextAsync(int count)
    {
        for (var wait = 0; wait < 600 && receiver.All.Count < count; wait++) await Task.Delay(100, Ct);
        return receiver.All[count - 1];
    }

    private async Task UntilTakenAsync(int count)
    {
        for (var wait = 0; wait < 600 && receiver.Taken.Count < count; wait++) await Task.Delay(100, Ct);
        Assert.Equal(count, receiver.Taken.Count);
    }
}
