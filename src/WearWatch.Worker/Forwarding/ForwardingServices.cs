using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage.Series;

namespace WearWatch.Worker.Forwarding;

/// <summary>Puts the sending on of telemetry into a host.</summary>
internal static class ForwardingServices
{
    /// <summary>Adds the settings and, where a server is set, what reads from it.</summary>
    public static void AddForwarding(this IServiceCollection services, IConfiguration section)
    {
        services.AddOptions<InfluxOptions>().Bind(section.GetSection("Influx")).ValidateDataAnnotations()
            .Validate(o => o.Url.Length == 0 || Uri.TryCreate(o.Url, UriKind.Absolute, out _),
                "Influx:Url has to be an address such as http://localhost:8086.")
            .ValidateOnStart();
        if (!IsOn(section)) return;
        services.AddSingleton(provider => new SeriesReader(Address(provider)));
        services.AddSingleton(provider => new SeriesWriter(Address(provider)));
        services.AddSingleton<Outbox>();
        services.AddSingleton<Forwarder>();
    }

    /// <summary>Adds what sends on of its own accord.</summary>
    public static void AddForwardingWork(this IServiceCollection services, IConfiguration section)
    {
        if (IsOn(section)) services.AddHostedService(provider => provider.GetRequiredService<Forwarder>());
    }

    private static bool IsOn(IConfiguration section) => !string.IsNullOrEmpty(section["Influx:Url"]);

    private static SeriesAddress Address(IServiceProvider provider) =>
        provider.GetRequiredService<IOptions<InfluxOptions>>().Value.Address!;
}
