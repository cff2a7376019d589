using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Tests.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>Receivers of webhooks are entered by administrators; their secrets are seen once and stand in no log.</summary>
public sealed partial class WebhookPagesTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private const string Page = "/people/webhooks";
    private const string Url = "https://orders.example.org/hooks/4711";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_secret_is_shown_once_and_what_was_done_stands_in_the_security_log_without_it_or_the_path()
    {
        var added = await plant.Administrator.SendFormAsync(Page, "add", ("Form.Name", "Orders"), ("Form.Url", Url));
        var secret = Secret().Match(await added.Content.ReadAsStringAsync(Ct)).Value;
        Assert.NotEmpty(secret);
        await using var db = await plant.Host.OpenAsync();
        var row = await db.WebhookAddresses.AsNoTracking().SingleAsync(a => a.Name == "Orders", Ct);
        var renewed = await plant.Administrator.SendFormAsync($"/people/webhooks/{row.Id}", "renew");
        Assert.NotEqual(secret, Secret().Match(await renewed.Content.ReadAsStringAsync(Ct)).Value);
        await plant.Administrator.SendFormAsync(
            $"/people/webhooks/{row.Id}", "change", ("Form.Name", "Orders"), ("Form.Url", Url), ("Form.Paused", "true"));
        await plant.Administrator.SendFormAsync($"/people/webhooks/{row.Id}", "test");
        foreach (var path in new[] { "/people/webhooks", $"/people/webhooks/{row.Id}", "/people/webhooks/log" })
            Assert.Empty(Secret().Match(await plant.Administrator.Http.GetStringAsync(path, Ct)).Value);
        await plant.Administrator.SendFormAsync($"/people/webhooks/{row.Id}", "remove");
        Assert.False(await db.WebhookAddresses.AnyAsync(a => a.Name == "Orders", Ct));
        var log = await plant.Administrator.Http.GetStringAsync("/people/log.csv", Ct);
        foreach (var kind in new[] { "WebhookAdded", "WebhookSecretRenewed", "WebhookChanged", "WebhookRemoved" })
            Assert.Contains($",{kind},Ada,Orders (orders.example.org)", log, StringComparison.Ordinal);
        Assert.DoesNotContain("4711", log, StringComparison.Ordinal);
        Assert.Empty(Secret().Match(log).Value);
    }

    [Theory]
    [InlineData("http://orders.example.org/hooks", "It has to begin with https://.")]
    [InlineData("https://[::ffff:169.254.169.254]/", "Nothing is sent there.")]
    [InlineData("https://127.0.0.1/", "Nothing is sent there.")]
    public async Task An_address_that_leads_inside_is_refused_with_why(string url, string why)
    {
        var refused = await plant.Administrator.SendFormAsync(Page, "add", ("Form.Name", "Inside"), ("Form.Url", url));
        Assert.Contains(why, await refused.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        await using var db = await plant.Host.OpenAsync();
        Assert.False(await db.WebhookAddresses.AnyAsync(a => a.Name == "Inside", Ct));
    }

    [Theory]
    [InlineData("/people/webhooks")]
    [InlineData("/people/webhooks/1")]
    [InlineData("/people/webhooks/log")]
    public async Task Nobody_but_an_administrator_sees_them(string path) => Assert.Equal(
        "/people/refused", (await plant.Technician.Http.GetAsync(path, Ct)).Headers.Location!.AbsolutePath);

    [GeneratedRegex("whsec_[A-Za-z0-9+/=]+")]
    private static partial Regex Secret();
}
