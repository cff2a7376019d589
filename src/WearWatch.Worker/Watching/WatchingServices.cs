using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Watching;

/// <summary>Puts into a host what watches it: health, and on request metrics and traces by OTLP.</summary>
internal static class WatchingServices
{
    public static void AddWatching(this IServiceCollection services, IConfiguration section)
    {
        services.AddSingleton<StoreHealth>();
        services.AddHealthChecks()
            .AddCheck<StoreHealth>("store")
            .AddCheck<BrokerHealth>("broker")
            .AddCheck<SeriesHealth>("time series")
            .AddCheck<MailHealth>("mail")
            .AddCheck<WebhookHealth>("webhooks")
            .AddCheck<JobsHealth>("jobs");
        if (section["Otlp"] is not { Length: > 0 } collector) return;
        var address = new Uri(collector);
        services.AddSingleton<IHealthCheckPublisher, HealthGauge>();
        services.AddOpenTelemetry()
            .ConfigureResource(resource => resource.AddService(Meters.Name))
            .WithMetrics(metrics => metrics.AddMeter(Meters.Name, "Microsoft.AspNetCore.Hosting", "Npgsql")
                .AddOtlpExporter(o => o.Endpoint = address))
            .WithTracing(traces => traces.AddSource(Meters.Name).AddOtlpExporter(o => o.Endpoint = address));
    }
}
