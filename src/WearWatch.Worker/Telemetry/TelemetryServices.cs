using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace WearWatch.Worker.Telemetry;

/// <summary>Puts the intake of telemetry into a host.</summary>
internal static class TelemetryServices
{
    public static void AddTelemetry(this IServiceCollection services, IConfiguration section)
    {
        services.AddOptions<TelemetryOptions>().Bind(section.GetSection("Telemetry")).ValidateDataAnnotations().ValidateOnStart();
        services.AddSingleton<ChainIds>();
        services.AddSingleton<TelemetryNews>();
        services.AddSingleton<TelemetryDesk>();
        services.AddSingleton<SetAsideDesk>();
        services.AddSingleton<TelemetryThinning>();
        services.AddHostedService<RegularThinning>();
    }
}
