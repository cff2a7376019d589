using System.Net;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Telemetry;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Mqtt;

/// <summary>Puts the intake of telemetry into a host.</summary>
internal static class TelemetryServices
{
    public static void AddTelemetry(this IServiceCollection services, IConfiguration section)
    {
        services.AddOptions<TelemetryOptions>().Bind(section.GetSection("Telemetry")).ValidateDataAnnotations().ValidateOnStart();
        services.AddSingleton<TelemetryPump>();

        services.AddOptions<MqttOptions>().Bind(section.GetSection("Mqtt")).ValidateDataAnnotations()
            .Validate(o => IPAddress.TryParse(o.EmbeddedAddress, out _),
                "Mqtt:EmbeddedAddress has to be an address such as 127.0.0.1 or 0.0.0.0.")
            .ValidateOnStart();
        services.AddSingleton<BrokerLink>();
        services.AddSingleton<BrokerVoice>();
        services.AddSingleton<IntakeTopics>();
        services.AddSingleton<TopicListener>();
        services.AddSingleton<EmbeddedBroker>();
    }

    /// <summary>Adds what takes telemetry in of its own accord.</summary>
    public static void AddTelemetryWork(this IServiceCollection services)
    {
        services.AddHostedService(p => p.GetRequiredService<TelemetryPump>());
        services.AddHostedService(p => p.GetRequiredService<EmbeddedBroker>());
        services.AddHostedService<MqttIntake>();
        services.AddHostedService<MappingWatch>();
        services.AddHostedService(p => p.GetRequiredService<TopicListener>());
        services.AddHostedService<SignalWatch>();
    }
}
