using Microsoft.Extensions.Diagnostics.HealthChecks;
using Microsoft.Extensions.Options;
using WearWatch.Worker.Mqtt;

namespace WearWatch.Worker.Watching;

/// <summary>Whether telemetry can arrive. Pages serve without it, so a lost broker is a warning.</summary>
internal sealed class BrokerHealth(BrokerLink link, IOptions<MqttOptions> mqtt, IOptions<WearWatchOptions> options) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(mqtt.Value.Server.Length == 0
            || !options.Value.Worker ? HealthCheckResult.Healthy("no broker is set for this process")
            : link.IsConnected ? HealthCheckResult.Healthy()
            : HealthCheckResult.Degraded(link.Problem));
}
