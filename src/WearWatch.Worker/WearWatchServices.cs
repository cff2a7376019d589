using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Options;
using WearWatch.Plant;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Engines;
using WearWatch.Worker.Demo;
using WearWatch.Worker.Forwarding;
using WearWatch.Worker.Jobs;
using WearWatch.Worker.Mailing;
using WearWatch.Worker.Mqtt;
using WearWatch.Worker.Starting;
using WearWatch.Worker.Watching;
using WearWatch.Worker.Webhooks;

namespace WearWatch.Worker;

/// <summary>Puts the worker into a host.</summary>
public static class WearWatchServices
{
    /// <summary>Adds the plant's memory, the intake, the tracking and the jobs.</summary>
    /// <param name="services">The host's services.</param>
    /// <param name="configuration">The host's configuration; the section <c>WearWatch</c> holds the settings.</param>
    public static IServiceCollection AddWearWatch(this IServiceCollection services, IConfiguration configuration)
    {
        var section = configuration.GetSection("WearWatch");
        services.AddOptions<WearWatchOptions>().Bind(section).ValidateDataAnnotations().ValidateOnStart();
        services.TryAddSingleton(TimeProvider.System);
        // Each does something only where the system's own service manager has started the program.
        services.AddSystemd().AddWindowsService(options => options.ServiceName = "WearWatch");
        services.AddSingleton(Folder);
        services.AddSingleton(Store);
        services.AddPlant();
        services.AddSingleton<FolderHold>();
        services.AddSingleton<Inbox>();
        services.AddSingleton<NewsListener>();
        services.AddSingleton<JobBook>();
        services.AddSingleton<TimelyReview>();
        services.AddSingleton<PlantNight>();
        services.AddSingleton<FleetSchool>();
        services.AddSingleton<BackupWatch>();
        services.AddSingleton<DemoPlant>();
        services.AddSingleton<DemoRegister>();
        services.AddSingleton<LiveDemo>();
        services.AddHostedService<DatabaseOpening>();
        services.AddHostedService<NewsFromOthers>();
        services.AddTelemetry(section);
        services.AddForwarding(section);
        services.AddMailing(section);
        services.AddWebhooks(section);
        services.AddWatching(section);
        if ((section.Get<WearWatchOptions>() ?? new WearWatchOptions()) is { Worker: true } options)
            services.AddWork(options, section);
        return services;
    }

    /// <summary>Opens the plant's memory before the host starts, so that what is wrong with it is said in words.</summary>
    /// <exception cref="FolderTakenException">Another worker has the data folder.</exception>
    public static async Task OpenMemoryAsync(this IHost host, CancellationToken ct = default)
    {
        if (host.Services.GetRequiredService<IOptions<WearWatchOptions>>().Value.Worker)
            host.Services.GetRequiredService<FolderHold>().Take();
        await host.Services.GetRequiredService<WearStore>().PrepareAsync(ct);
    }

    /// <summary>What a worker does of its own accord, as against what it is asked to.</summary>
    private static void AddWork(this IServiceCollection services, WearWatchOptions options, IConfiguration section)
    {
        services.AddHostedService<InboxWatcher>();
        services.AddHostedService<WorkOrderWatch>();
        services.AddTimetable(options);
        services.AddTelemetryWork();
        services.AddForwardingWork(section);
        services.AddMailingWork(section);
        services.AddWebhookWork();
    }

    private static DataFolder Folder(IServiceProvider provider) => new(Path.Combine(
        provider.GetRequiredService<IHostEnvironment>().ContentRootPath,
        provider.GetRequiredService<IOptions<WearWatchOptions>>().Value.DataFolder));

    private static WearStore Store(IServiceProvider provider) =>
        provider.GetRequiredService<IOptions<WearWatchOptions>>().Value.Database is { Length: > 0 } postgres
            ? WearStore.InPostgres(postgres, provider)
            : WearStore.InSqlite(provider.GetRequiredService<DataFolder>().Database, provider);
}
