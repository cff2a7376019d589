using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Worker.Mailing;

namespace WearWatch.Worker.Watching;

/// <summary>Whether mail is sent. It waits where it is safe, so trouble is a warning.</summary>
internal sealed class MailHealth(IServiceProvider services) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(services.GetService<MailCarrier>() is not { } carrier
            ? HealthCheckResult.Healthy("no mail server is set")
            : carrier.Trouble is { } trouble ? HealthCheckResult.Degraded(trouble)
            : HealthCheckResult.Healthy());
}
