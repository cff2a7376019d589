using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Console;
using Quartz;

namespace WearWatch.Browser.Tests;

/// <summary>The real dashboard on a real socket, with a data folder of its own.</summary>
public sealed class DashboardHost : WebApplicationFactory<Program>
{
    private bool isLeaving;

    public string DataFolder { get; } = Directory.CreateTempSubdirectory("wearwatch-browser-").FullName;

    /// <summary>
    /// Whether its timetable stands still, for a test that writes forecasts itself: a regular review between its rows would make
    /// others.
    /// </summary>
    public bool StandsStill { get; init; }

    /// <summary>Its clock, for a test in which time goes by; null for the true one.</summary>
    public TimeProvider? Clock { get; init; }

    /// <summary>Settings of the section WearWatch, such as <c>Mail:Host</c>.</summary>
    public IReadOnlyList<(string Key, string Value)> Settings { get; init; } = [];

    /// <summary>Starts it on a free port; its address.</summary>
    public string Listen()
    {
        UseKestrel(0);
        StartServer();
        return ClientOptions.BaseAddress.ToString().TrimEnd('/');
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Development"); // static files of packages are served unpublished only there
        builder.UseSetting("WearWatch:DataFolder", DataFolder);
        foreach (var (key, value) in Settings) builder.UseSetting("WearWatch:" + key, value);
        // A page that is still open when its host goes has nothing to say that a person could use.
        builder.ConfigureLogging(logging =>
            logging.AddFilter<ConsoleLoggerProvider>((_, level) => level >= LogLevel.Warning && !isLeaving));
        if (StandsStill)
            builder.ConfigureServices(s => s.Remove(s.Single(d => d.ImplementationType == typeof(QuartzHostedService))));
        if (Clock is not null) builder.ConfigureServices(s => s.AddSingleton(Clock));
    }

    protected override void Dispose(bool disposing)
    {
        isLeaving = true;
        base.Dispose(disposing);
        if (disposing && Directory.Exists(DataFolder)) Directory.Delete(DataFolder, recursive: true);
    }
}
