using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Worker.Demo;

namespace WearWatch.Browser.Tests;

/// <summary>The simulated mill as a newcomer sees it; its pictures are what docs/images shows.</summary>
public sealed class DemoTests(Screen screen) : IAsyncLifetime
{
    private readonly DashboardHost mill = new();
    private string address = "";

    public async ValueTask InitializeAsync()
    {
        address = mill.Listen();
        await mill.Services.GetRequiredService<DemoPlant>().LoadAsync(null, TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync() => mill.DisposeAsync();

    [Fact]
    public async Task The_mill_fills_every_page_and_one_chain_of_each_condition_can_be_read()
    {
        foreach (var dark in new[] { false, true })
        {
            var look = dark ? "dark" : "light";
            await using var desk = await screen.AtDeskAsync(dark, address);
            await desk.GoAsync("/");
            await Assertions.Expect(desk.Page.GetByText("80 chains ·")).ToBeVisibleAsync();
            await desk.PictureAsync($"mill-glance-desk-{look}", whole: false);
            await desk.GoAsync("/chains");
            await desk.Page.Locator(".chain-grid .chain-link").First.WaitForAsync();
            await desk.PictureAsync($"mill-chains-desk-{look}", whole: false);
            await desk.GoAsync("/notices");
            await desk.Page.Locator(".board").WaitForAsync();
            await desk.PictureAsync($"mill-notices-desk-{look}", whole: false);
            await using var phone = await screen.OnPhoneAsync(dark, address);
            foreach (var condition in new[] { "within-limit", "plan-a-swap", "swap-now", "not-known" })
            {
                await desk.GoAsync("/chains?condition=" + condition);
                var chain = await desk.Page.Locator(".chain-grid .chain-link").First.GetAttributeAsync("href");
                await desk.GoAsync(chain!);
                await desk.Page.Locator(".headline." + condition).WaitForAsync();
                await desk.PictureAsync($"mill-chain-{condition}-desk-{look}", whole: false);
                if (condition != "plan-a-swap") continue;
                await phone.GoAsync(chain!);
                await phone.Page.Locator(".headline").WaitForAsync();
                await phone.PictureAsync($"mill-chain-phone-{look}", whole: false);
                Assert.Empty(await desk.BarriersAsync());
            }

            await phone.GoAsync("/");
            await phone.Page.Locator(".weeks").WaitForAsync();
            await phone.PictureAsync($"mill-glance-phone-{look}", whole: false);
            Assert.Empty(desk.Complaints);
            Assert.Empty(phone.Complaints);
        }
    }
}
