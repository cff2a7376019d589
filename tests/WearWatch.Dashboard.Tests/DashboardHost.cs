using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Quartz;
using WearWatch.Storage;
using WearWatch.Storage.Tests;

namespace WearWatch.Dashboard.Tests;

/// <summary>The real dashboard in this process, with a data folder of its own.</summary>
/// <remarks>
/// Its timetable stands still: a regular review in the midst of a test that writes rows itself would review what is half written.
/// </remarks>
public sealed class DashboardHost : WebApplicationFactory<Program>
{
    public string DataFolder { get; } = Directory.CreateTempSubdirectory("wearwatch-dashboard-").FullName;

    /// <summary>The plant's clock; the true one unless a test sets another.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    public T Get<T>()
        where T : notnull => Services.GetRequiredService<T>();

    public Task<WearDb> OpenAsync() => Get<IDbContextFactory<WearDb>>().CreateDbContextAsync();

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Development"); // static files of packages are served unpublished only there
        builder.UseSetting("WearWatch:DataFolder", DataFolder);
        builder.UseSetting("Logging:LogLevel:Default", "Warning");
        builder.ConfigureServices(services =>
        {
            foreach (var timetable in services.Where(s => s.ImplementationType == typeof(QuartzHostedService)).ToList())
                services.Remove(timetable);
            services.AddSingleton(Clock);
            // Slow on purpose in a plant: a tenth of a second for each password.
            services.Configure<PasswordHasherOptions>(o => o.IterationCount = 1);
        });
        PatternFile.CopyTo(Path.Combine(DataFolder, "wearwatch.db"));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(DataFolder)) Directory.Delete(DataFolder, recursive: true);
    }
}
