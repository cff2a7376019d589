using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>Where a request comes from is believed from named proxies only (OWASP ASVS 5, V4.1.3).</summary>
public sealed class TrustedProxyTests : IAsyncDisposable
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Theory]
    [InlineData("", "10.0.0.5")] // nobody is named
    [InlineData("10.0.0.9", "10.0.0.5")] // another one
    [InlineData("10.0.0.5", "192.0.2.7")]
    [InlineData("10.0.0.0/24", "192.0.2.7")]
    public async Task A_forwarded_address_counts_if_a_named_proxy_says_it(string named, string seen)
    {
        await using var behind = Behind(named);
        using var ada = new Caller(behind);
        ada.Http.DefaultRequestHeaders.Add("X-Forwarded-For", "192.0.2.7");
        await ada.SetUpAsync();
        await using var db = await behind.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        Assert.Equal(seen, Assert.Single(db.Sessions).Address);
    }

    [Fact]
    public async Task A_name_that_is_no_address_stops_the_start()
    {
        await using var behind = Behind("our-proxy");
        Assert.ThrowsAny<Exception>(() => behind.CreateClient()); // the console says which
    }

    private WebApplicationFactory<Program> Behind(string named) => host.WithWebHostBuilder(b => b
        .UseSetting("WearWatch:TrustedProxies", named)
        // What once made every address believed. It reads them once more, before the test's proxy has said who it is.
        .UseSetting("FORWARDEDHEADERS_ENABLED", named.StartsWith("10.0.0.5", StringComparison.Ordinal)
            || named.Contains('/', StringComparison.Ordinal) ? "false" : "true")
        .ConfigureServices(s => s.AddSingleton<IStartupFilter>(new FromProxy())));

    private sealed class FromProxy : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((http, go) =>
            {
                http.Connection.RemoteIpAddress = IPAddress.Parse("10.0.0.5");
                return go(http);
            });
            next(app);
        };
    }
}
