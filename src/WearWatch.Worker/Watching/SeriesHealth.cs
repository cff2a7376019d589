using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Worker.Forwarding;

namespace WearWatch.Worker.Watching;

/// <summary>Whether telemetry is sent on. It waits where it is safe, so trouble is a warning.</summary>
internal sealed class SeriesHealth(IServiceProvider services) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(services.GetService<Forwarder>() is not { } forwarder
            ? HealthCheckResult.Healthy("no store of time series is set")
            : forwarder.Trouble is { } trouble ? HealthCheckResult.Degraded(trouble)
            : HealthCheckResult.Healthy());
}
