using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>A plant beside its company's OpenID provider, administered by Ada, who has a password.</summary>
internal sealed class CompanyMill : IAsyncDisposable
{
    private readonly DashboardHost host = new();

    public CompanyProvider Provider { get; } = new();

    public WebApplicationFactory<Program> Plant { get; private set; } = null!;

    public Caller Ada { get; private set; } = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>A plant that asks a provider.</summary>
    public static WebApplicationFactory<Program> Of(DashboardHost host, CompanyProvider provider) =>
        host.WithWebHostBuilder(builder =>
        {
            foreach (var (key, value) in provider.Settings) builder.UseSetting("WearWatch:" + key, value);
        });

    public async ValueTask StartAsync()
    {
        await Provider.StartAsync();
        Plant = Of(host, Provider);
        Ada = new Caller(Plant);
        await Ada.SetUpAsync();
    }

    public Task<WearDb> OpenAsync() =>
        Plant.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);

    /// <summary>The person of an account.</summary>
    public async Task<PersonRow> PersonAsync(string subject)
    {
        await using var db = await OpenAsync();
        return await db.People.SingleAsync(p => p.Subject == subject, Ct);
    }

    /// <summary>The provider's mark of the session that was begun first.</summary>
    public async Task<string> FirstSessionAsync()
    {
        await using var db = await OpenAsync();
        return await (
            from session in db.Sessions
            join company in db.CompanySessions on session.Id equals company.SessionId
            orderby session.BegunAt
            select company.ProviderSession).FirstAsync(Ct);
    }

    /// <summary>Waits until something holds.</summary>
    public static async Task UntilAsync(Func<Task<bool>> holds)
    {
        for (var wait = 0; wait < 200; wait++)
        {
            if (await holds()) return;
            await Task.Delay(50, Ct);
        }

        Assert.Fail("It did not come to hold within 10 s.");
    }

    public async ValueTask DisposeAsync()
    {
        Ada.Dispose();
        await Plant.DisposeAsync();
        await host.DisposeAsync();
        await Provider.DisposeAsync();
    }
}
